// The figures behind plans: each with its range, unit, mark and source, and each in this
// one place.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant weft_slack{"weft laid in slack",  0.03, 0.0, 0.05, "relative",
                                     Mark::common_practice, ""};
inline constexpr Constant joins_and_tails{
    "yarn lost in joins and tails",        0.4, 0.2, 0.6, "m a piece", Mark::judgement,
    "a cast-on tail and two woven-in ends"};

inline constexpr Constant plying_takes_up{
    "length that plying once more takes up", 0.07, 0.03, 0.12, "of each strand", Mark::judgement,
    "from the angle of a usual ply twist"};

}  // namespace gristwright::constants
