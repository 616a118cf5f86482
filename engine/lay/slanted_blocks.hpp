// Small blocks of knitting on the slant, tier over tier: the rows of one tier grow up to the right,
// those of the next up to the left, each block picked up along the sides of those below it.
#pragma once

#include "engine/lay/chart.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/strand.hpp"

namespace gristwright::lay {

// Blocks of `stitches` by twice as many rows, square as they lie: a stitch is picked up for every
// two rows, so they hold the area that their stitches and rows have in plain cloth.
std::vector<Strand> slanted_blocks(const Chart& chart, const Spacing& spacing, int stitches,
                                   double width, double height);

}  // namespace gristwright::lay
