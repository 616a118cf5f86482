// Half a loop of plain knitting, from the middle of the foot (-w / 2, 0) to the top of the head
// (0, h), both level: one cubic whose two handles are `reach` long.
//
// F. T. Peirce 1947, Text. Res. J. 17:123 (from memory) draws the loop of arcs and straight legs;
// at his closest, stitches 4 and rows 3.364 thicknesses apart, it holds 16.67 thicknesses of yarn.
// The cubic holds the same yarn over the same spacings, and is easier to lean, widen and cross.
#pragma once

#include "engine/lay/place.hpp"

namespace gristwright::lay {

struct HalfLoop {
    double w = 0, h = 0, reach = 0;  // mm

    Place at(double t) const;  // 0 foot .. 1 head
    double length() const;
};

// The half loop that holds `length` of yarn; the straightest one where even that is longer.
HalfLoop half_loop(double w, double h, double length);

// Yarn in a loop of Peirce's shape: 2 row + stitch + 5.94 thicknesses (1947, from memory).
double peirce_loop(double stitch, double row, double thickness);

}  // namespace gristwright::lay
