// Woven cloth thread by thread: ends (yarn 0) and picks (yarn 1) that rise and sink over each
// other.
#pragma once

#include "engine/cloth/weaving.hpp"
#include "engine/lay/chart.hpp"
#include "engine/lay/colour_order.hpp"
#include "engine/lay/strand.hpp"

namespace gristwright::lay {

// Spacings of the finished cloth and the yarn's thickness in mm.
std::vector<Strand> woven(const Chart& chart, double end, double pick, double thickness,
                          double width, double height, const ColourOrder& colours = {},
                          WeaveBuild built = WeaveBuild::single_threads);

}  // namespace gristwright::lay
