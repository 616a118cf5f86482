// Knitted cloth row by row. Each loop is two half loops that hold the planned yarn; a foot and a
// head lie behind the next loop's legs where it is knit, in front of them where it is purled.
#pragma once

#include "engine/cloth/knitting.hpp"
#include "engine/lay/chart.hpp"
#include "engine/lay/colour_order.hpp"
#include "engine/lay/strand.hpp"

namespace gristwright::lay {

struct Spacing {
    double stitch = 1, row = 1;  // mean over the repeat, mm
    double loop = 4;             // yarn to one stitch's place, mm
    double thickness = 0.5;      // mm
};

// Of a planned cloth as finished. The loop is the fabric's own: metres per area over loops per
// area.
Spacing spacing(const KnitCloth& cloth, Length thickness);

// Strands reach a few stitches and rows beyond the window of `width` by `height` mm.
std::vector<Strand> knitted(const Chart& chart, const Spacing& spacing, double width, double height,
                            const ColourOrder& colours = {});

// So many stitches by so many rows, knitted to and fro of one length.
Strand knitted_block(const Chart& chart, const Spacing& spacing, int stitches, int rows);

}  // namespace gristwright::lay
