// Makes the counts of a plan's knitted pieces close: what a step adds or takes brings one count to
// the next without a stitch over.
//
// An implementation header of plan(): others read the Plan.
#pragma once

#include "engine/project/plan.hpp"

namespace gristwright {

void close_counts(Plan& plan);

}  // namespace gristwright
