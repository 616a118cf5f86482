#include "engine/lay/field.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright::lay {
namespace {

// The mean of 2 reach + 1 numbers at each place of a line; beyond its ends the last one repeats.
void run_mean(const float* from, float* to, int count, std::size_t step, int reach) {
    const auto value = [&](int i) {
        return double{from[static_cast<std::size_t>(std::clamp(i, 0, count - 1)) * step]};
    };
    double sum = 0;
    for (int i = -reach; i <= reach; ++i) sum += value(i);
    for (int i = 0; i < count; ++i) {
        to[static_cast<std::size_t>(i) * step] = static_cast<float>(sum / (2 * reach + 1));
        sum += value(i + reach + 1) - value(i - reach);
    }
}

}  // namespace

Field blurred(Field field, double sigma) {
    // Three means of n have the variance of (n^2 - 1) / 4.
    const int reach = static_cast<int>(std::lround((std::sqrt(4 * sigma * sigma + 1) - 1) / 2));
    if (reach < 1) return field;
    Field other = field;
    for (int pass = 0; pass < 3; ++pass) {
        for (int y = 0; y < field.height; ++y)
            run_mean(&field.at[field.index(0, y)], &other.at[field.index(0, y)], field.width, 1,
                     reach);
        for (int x = 0; x < field.width; ++x)
            run_mean(&other.at[field.index(x, 0)], &field.at[field.index(x, 0)], field.height,
                     static_cast<std::size_t>(field.width), reach);
    }
    return field;
}

}  // namespace gristwright::lay
