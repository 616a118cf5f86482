// A warp from one end to the other, with its numbers, and the heddle or reed that it goes through.
#pragma once

#include "cli/output/svg.hpp"
#include "cli/output/units.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

// Not for what is woven on a frame. Draws them below `at`, as wide as said; returns where the next
// begins.
double draw_warp(Svg& svg, Point at, double width, const PlanPiece& piece, const Template& article,
                 const Units& units);

}  // namespace gristwright::cli
