#include "engine/suitability/standing.hpp"

#include <algorithm>
#include <cmath>

#include "engine/suitability/judgement.hpp"

namespace gristwright {
namespace {

constexpr std::size_t steps = 40;      // levels are kept at every 2.5 % of the yarns
constexpr double same_service = 1e-4;  // rounding of what is kept

}  // namespace

std::vector<double> standing_levels(const Template& article, const std::vector<YarnProfile>& yarns,
                                    const Fabrics& fabrics) {
    Request ideal;
    ideal.size = article.ideal;
    std::vector<double> all;
    for (const auto& yarn : yarns)
        all.push_back(judge(plan(article, yarn, fabrics, {}, ideal), yarn).served);
    if (all.empty()) return {};
    std::sort(all.begin(), all.end());
    std::vector<double> out;
    for (std::size_t i = 0; i <= steps; ++i) out.push_back(all[(all.size() - 1) * i / steps]);
    return out;
}

double share_beaten(const std::vector<double>& levels, double served) {
    const auto first =
        std::lower_bound(levels.begin(), levels.end(), served - same_service) - levels.begin();
    const auto count = static_cast<std::ptrdiff_t>(levels.size());
    if (first == 0) return 0;
    if (first == count) return 1;
    const double below = levels[static_cast<std::size_t>(first - 1)];
    const double above = levels[static_cast<std::size_t>(first)];
    const double part = std::clamp((served - below) / (above - below), 0.0, 1.0);
    // What ties with the level above is not beaten.
    const bool ties = served >= above - same_service;
    return (static_cast<double>(first - 1) + (ties ? 1 : part)) / static_cast<double>(count - 1);
}

}  // namespace gristwright
