// A standing figure for scale: our own simple drawing, of nobody in particular.
#pragma once

#include "cli/output/path.hpp"

namespace gristwright::cli {

inline constexpr double figure_height = 170;  // cm, common practice for a grown person's outline

// In cm, the feet at 0, x to both sides of it: the body, then the head.
std::vector<Line> standing_figure();

}  // namespace gristwright::cli
