// Plain knitting of plain wool, fully relaxed: stitch 4.2, row 5.5 to a loop of 1.
#pragma once

#include "engine/lay/knitted.hpp"

namespace gristwright::lay {

inline constexpr Spacing plain{4.0, 3.054, 16.8, 1.0};  // in a yarn that suits
inline constexpr Spacing thick_plain{4.0, 3.054, 16.8, 1.8};

}  // namespace gristwright::lay
