// A stitch or a weave of the table laid over a window: its chart, its colours, its areas, and how
// it is built where a chart alone cannot say.
#pragma once

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/weaving.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/strand.hpp"

namespace gristwright::lay {

// Of the finished cloth, and the yarn's thickness, mm.
struct WebSpacing {
    double end = 1, pick = 1, thickness = 0.5;
};

// `spacing.loop`: of the fabric's row, all its layers together.
std::vector<Strand> laid(const KnitFabric& fabric, const Spacing& spacing, double width,
                         double height);
std::vector<Strand> laid(const Weave& weave, const WebSpacing& spacing, double width,
                         double height);

// Its rows, ends, picks, areas or the strands behind it are of two yarns.
bool of_two_yarns(const KnitFabric& fabric);
bool of_two_yarns(const Weave& weave);

// Stitches, or ends, after which the cloth repeats: its chart's, or its colours' if they are more.
int repeat_across(const KnitFabric& fabric);
int repeat_across(const Weave& weave);

// The upper right corner of a window's cloth folded over to the front, so that its other side is
// seen. `half`: of the cloth's thickness, mm.
std::vector<Strand> corner_turned(const std::vector<Strand>& strands, double width, double height,
                                  double half);

}  // namespace gristwright::lay
