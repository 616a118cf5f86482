#include "engine/yarn/agreement.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>

#include "engine/estimate/estimate.hpp"

namespace gristwright {
namespace {

struct Weighted {
    double weights = 0, squares = 0, statistic = 0;
};

// Cochran's Q about the weighted mean.
Weighted scatter(const std::vector<GristReading>& skeins) {
    Weighted sum;
    double weighted = 0;
    for (const auto& s : skeins) {
        const double w = 1 / (s.own_spread * s.own_spread);
        sum.weights += w;
        sum.squares += w * w;
        weighted += w * s.log_tex;
    }
    const double mean = weighted / sum.weights;
    for (const auto& s : skeins) sum.statistic += std::pow((s.log_tex - mean) / s.own_spread, 2);
    return sum;
}

// The largest reach of any pair's 90 % interval from zero: inside the margin, all are the same.
double furthest_reach(const std::vector<GristReading>& skeins) {
    double furthest = 0;
    for (std::size_t i = 0; i < skeins.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            furthest =
                std::max(furthest, std::abs(skeins[i].log_tex - skeins[j].log_tex) +
                                       normal_quantile(0.95) *
                                           together(skeins[i].own_spread, skeins[j].own_spread));
    return furthest;
}

double smallest_difference_shown(const std::vector<GristReading>& skeins) {
    std::vector<double> spreads;
    for (const auto& s : skeins) spreads.push_back(s.own_spread);
    std::nth_element(spreads.begin(), spreads.begin() + 1, spreads.end());
    return std::expm1(normal_quantile(0.975) * together(spreads[0], spreads[1]));
}

double widest_difference(const std::vector<GristReading>& skeins) {
    const auto [low, high] =
        std::minmax_element(skeins.begin(), skeins.end(),
                            [](const auto& a, const auto& b) { return a.log_tex < b.log_tex; });
    return std::expm1(high->log_tex - low->log_tex);
}

}  // namespace

Agreement agree(const std::vector<GristReading>& skeins, double margin) {
    Agreement found;
    if (skeins.size() < 2) return found;
    const double freedom = static_cast<double>(skeins.size() - 1);
    const auto sum = scatter(skeins);
    found.statistic = sum.statistic;
    found.critical = boost::math::quantile(boost::math::chi_squared{freedom}, 0.95);
    if (skeins.size() == 2) {  // one degree of freedom: Q is z squared
        found.statistic = std::sqrt(found.statistic);
        found.critical = normal_quantile(0.975);
    }
    found.between = std::sqrt(
        std::max(0.0, (sum.statistic - freedom) / (sum.weights - sum.squares / sum.weights)));
    found.smallest_shown = smallest_difference_shown(skeins);
    found.widest = widest_difference(skeins);
    if (found.statistic > found.critical)
        found.answer = SameYarn::differ;
    else if (furthest_reach(skeins) <= std::log1p(margin))
        found.answer = SameYarn::same;
    else
        found.answer = SameYarn::cannot_tell;
    return found;
}

}  // namespace gristwright
