// Drawings of an article put together.
#pragma once

#include "cli/output/assembled.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/svg.hpp"

namespace gristwright::cli {

// Every part with its edge, and the fringe; `pose` turns cm into the picture's units.
void draw_parts(Svg& svg, const Assembled& article, const Pose& pose, bool with_loose);

// Across and down along a box, with its size in words.
void measure_across(Svg& svg, Point from, double length, const std::string& words);
void measure_down(Svg& svg, Point from, double length, const std::string& words);

// How wide an article is as laid, or one of several; a shawl's edge is told where it counts.
std::string width_laid(const Plan& plan, const Assembled& article, const Units& units);

// For a card: the article and its two sizes.
Svg card_drawing(const Plan& plan, const Units& units);

}  // namespace gristwright::cli
