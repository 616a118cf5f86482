#include "engine/cloth/gauge_range.hpp"

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/knitting_constants.hpp"

namespace gristwright {

std::optional<FarGauge> far_from_yarn(Gauge counted, const YarnProfile& yarn) {
    auto uncounted = yarn;
    uncounted.washed_gauge.reset();
    uncounted.evidence = {};
    const auto usual = knit_cloth(uncounted, KnitFabric{}, Firmness::ordinary, {}).gauge.mid;
    const double ratio = counted / usual;
    if (ratio >= constants::loosest_counted && ratio <= constants::tightest_counted) return {};
    return FarGauge{counted, usual};
}

}  // namespace gristwright
