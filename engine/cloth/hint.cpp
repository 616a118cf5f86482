#include "engine/cloth/hint.hpp"

#include <algorithm>
#include <cmath>

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/knitting_constants.hpp"
#include "engine/yarn/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

// Of plain cloth; what its pieces add is the same with a swatch.
Hint count_gauge(YarnProfile yarn) {
    const auto plain = [&] { return knit_cloth(yarn, KnitFabric{}, Firmness::ordinary, {}); };
    const auto before = plain();
    yarn.washed_gauge = before.gauge.mid;
    return {Measurement::swatch, before.metres_per_area.spread, plain().metres_per_area.spread};
}

Hint count_wraps(const YarnProfile& yarn) {
    const auto alone = gauge_by_grist(yarn.linear_density.mid);
    const auto wraps = yarn.laid_wraps.mid;
    const auto both = weigh(alone, gauge_by_wraps(wraps, wraps_margin({wraps})));
    return {Measurement::wraps, alone.spread, both.spread};
}

Hint measure_washed(const YarnProfile& yarn) {
    const double all = yarn.length.spread, doubt = yarn.state_doubt;
    return {Measurement::washed_lengths, all, std::sqrt(all * all - doubt * doubt)};
}

}  // namespace

std::vector<Hint> what_sharpens(const YarnProfile& yarn) {
    std::vector<Hint> out;
    if (!yarn.washed_gauge && !yarn.evidence.gauge) out.push_back(count_gauge(yarn));
    if (!yarn.wraps_measured) out.push_back(count_wraps(yarn));
    if (yarn.state_doubt > 0) out.push_back(measure_washed(yarn));
    const auto lightest = std::max_element(
        yarn.skeins.begin(), yarn.skeins.end(),
        [](const auto& a, const auto& b) { return a.margin.mass < b.margin.mass; });
    if (lightest != yarn.skeins.end() && lightest->margin.mass > scale_matters)
        out.push_back({Measurement::finer_scale, lightest->margin.mass, 0, lightest->name});
    if (!yarn.twist_factor) out.push_back({Measurement::ply_twist});
    const bool named = !yarn.felting.empty();  // a breed whose micron varies is named all the same
    if (!yarn.fibre_diameter && !named) out.push_back({Measurement::fibre});
    return out;
}

}  // namespace gristwright
