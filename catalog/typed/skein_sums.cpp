#include "catalog/typed/skein_sums.hpp"

#include <cmath>
#include <cstddef>
#include <optional>
#include <utility>

#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

using Sizes = std::optional<std::pair<double, double>>;

Sizes sizes_of(const SkeinText& skein) {
    try {
        const auto [length, mass] = read_skein(skein.length.text, skein.mass.text);
        return std::pair{length.value.si(), mass.value.si()};
    } catch (const Refused&) {
        return {};
    }
}

}  // namespace

bool sums_up(const std::vector<SkeinText>& skeins) {
    if (skeins.size() < 3 || !skeins.back().name.text.empty() || skeins[0].name.text.empty())
        return false;
    std::pair<double, double> sum{0, 0};
    for (std::size_t s = 0; s + 1 < skeins.size(); ++s) {
        const auto one = sizes_of(skeins[s]);
        if (!one) return false;
        sum.first += one->first, sum.second += one->second;
    }
    constexpr double rounding = 0.01;
    const auto last = sizes_of(skeins.back());
    return last && std::abs(last->first / sum.first - 1) < rounding &&
           std::abs(last->second / sum.second - 1) < rounding;
}

}  // namespace gristwright::catalog
