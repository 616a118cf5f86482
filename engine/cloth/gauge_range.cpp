#include "engine/cloth/gauge_range.hpp"

#include <fmt/core.h>

#include "engine/cloth/constants.hpp"
#include "engine/cloth/knitting.hpp"

namespace gristwright {

std::string far_from_yarn(Gauge counted, const YarnProfile& yarn) {
    auto uncounted = yarn;
    uncounted.washed_gauge.reset();
    uncounted.evidence = {};
    const auto usual = knit_cloth(uncounted, KnitFabric{}, Firmness::ordinary, {}).gauge.mid;
    const double ratio = counted / usual;
    if (ratio >= constants::loosest_counted && ratio <= constants::tightest_counted) return "";
    return fmt::format(
        "{:.0f} stitches to 10 cm is {} than this yarn is knitted at, about {:.0f} in stocking "
        "stitch: is it counted over 10 cm, in stocking stitch, and of this yarn?",
        in_stitches_per_10cm(counted), ratio < 1 ? "far looser" : "far tighter",
        in_stitches_per_10cm(usual));
}

}  // namespace gristwright
