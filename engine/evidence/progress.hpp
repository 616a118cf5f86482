// Weighing the ball as the work goes: metres used so far, and how far the rest will reach.
#pragma once

#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

struct Weighing {
    double row = 0;  // rows worked when it was weighed
    Mass ball;       // all yarn still to be used
};

struct Progress {
    Length used, left;        // metres
    Estimate<double> factor;  // metres used / metres the plan expected by then
    double last_row = 0;      // the last the yarn reaches, at the median
    double sure_row = 0;      // the last it reaches with the certainty asked
    bool reaches = false;     // the whole plan, with the certainty asked
    double chance = 0;        // that it reaches the whole plan
    Mass keep_for_rest;       // for the pieces after this one (the border), at the certainty asked
    double begin_rest_row = 0;  // then begin them after this row; 0: there are none
};

// `start` is what the yarn weighed when the work began; weighings in the order they were made. The
// first piece of the plan is the one worked; the others follow it. Throws std::invalid_argument for
// a ball that grows heavier, a row that goes back, or no weighing.
Progress progress(const Plan& plan, LinearDensity grist, Mass start,
                  const std::vector<Weighing>& weighings);

}  // namespace gristwright
