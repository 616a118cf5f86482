// Cloth at true scale from the computed geometry: stocking stitch or plain weave, whichever craft
// the plan is of. A drawing from measurements, not a photograph; the halo is seeded, so the same
// batch gives the same picture.
#pragma once

#include "cli/output/svg.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

Svg cloth_picture(const Plan& plan, const YarnProfile& yarn);

// Half a loop of plain knitting, from the middle of the foot (-w / 2, 0) to the top of the head
// (0, h), both level: one cubic whose two handles are `reach` long. Lengths in mm.
struct HalfLoop {
    double w = 0, h = 0, reach = 0;

    Point at(double t) const;  // 0 foot .. 1 head
    double length() const;
};
// The half loop that holds `length` of yarn; the straightest one where even that is longer.
HalfLoop half_loop(double w, double h, double length);

}  // namespace gristwright::cli
