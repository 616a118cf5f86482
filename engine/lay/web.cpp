#include "engine/lay/web.hpp"

#include <algorithm>
#include <cmath>

#include "engine/lay/constants.hpp"

namespace gristwright::lay {
namespace {

// Ends of the upper cloth lie over every pick of the lower one, ends of the lower under every pick
// of the upper.
bool parts_in_two(const Chart& chart, int ends, int picks) {
    for (int i = 0; i < 2 * chart.across(); ++i)
        for (int j = 0; j < 2 * chart.up(); ++j) {
            const bool upper_end = i % 2 == ends, upper_pick = j % 2 == picks;
            if (upper_end != upper_pick && (chart.at(i, j) == 'x') != upper_end) return false;
        }
    return true;
}

int parity(int n) { return ((n % 2) + 2) % 2; }

}  // namespace

Web::Web(const Chart& chart) : chart_(chart) {
    for (const int ends : {0, 1})
        for (const int picks : {0, 1})
            if (parts_in_two(chart, ends, picks)) upper_ = Upper{ends, picks};
}

double Web::end(int i, int j) const {
    if (!upper_) return (up(i, j) ? 1 : -1) * constants::crimp_rise + lifted(i, j);
    const bool upper = parity(i) == upper_->ends;
    const double layer = (upper ? 0.5 : -0.5) * constants::layers_part;
    if ((parity(j) == upper_->picks) != upper) return layer;
    return layer + (up(i, j) ? 1 : -1) * constants::crimp_rise;
}

double Web::pick(int i, int j) const {
    if (!upper_) return (up(i, j) ? -1 : 1) * constants::crimp_rise + lifted(i, j);
    const bool upper = parity(j) == upper_->picks;
    const double layer = (upper ? 0.5 : -0.5) * constants::layers_part;
    if ((parity(i) == upper_->ends) != upper) return layer;
    return layer + (up(i, j) ? -1 : 1) * constants::crimp_rise;
}

// Threads that the one on top passes there.
double Web::run(int i, int j) const {
    const bool warp = up(i, j);
    const int most = warp ? chart_.up() : chart_.across();
    const auto same = [&](int step) {
        int n = 0;
        while (n < most && (warp ? up(i, j + step * (n + 1)) : up(i + step * (n + 1), j)) == warp)
            ++n;
        return n;
    };
    return 1 + std::min(most, same(1) + same(-1));
}

// Neighbours rise together.
double Web::lifted(int i, int j) const {
    double sum = 0;
    for (int di = -1; di <= 1; ++di)
        for (int dj = -1; dj <= 1; ++dj) sum += std::log2(run(i + di, j + dj));
    return constants::float_lifts * sum / 9;
}

}  // namespace gristwright::lay
