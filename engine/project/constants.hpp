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

}  // namespace gristwright::constants
