// Woven cloth thread by thread: ends behind, picks before them, and each end again where it passes
// over a pick.
#pragma once

#include "engine/lay/chart.hpp"
#include "engine/lay/cloth.hpp"

namespace gristwright::lay {

// Spacings of the finished cloth and the yarn's thickness in mm.
Cloth woven(const Chart& chart, double end, double pick, double thickness, double width,
            double height);

}  // namespace gristwright::lay
