// What knitted cloth's loops hold, shared by its flat drawing and its relief.
#pragma once

#include "engine/lay/chart.hpp"
#include "engine/lay/knitted.hpp"

namespace gristwright::lay {

// Yarn in a loop that is made, mm: where a stitch is slipped the yarn only passes behind, and the
// loops that are made hold the rest.
double loop_made(const Chart& chart, const Spacing& spacing);
// The row whose loop is pulled through this one's head.
int next_row(const Chart& chart, int wale, int row);

}  // namespace gristwright::lay
