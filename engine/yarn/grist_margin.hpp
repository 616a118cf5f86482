// The margin of a skein's grist: a GUM budget (JCGM 100:2008) of relative standard uncertainties.
#pragma once

#include "engine/yarn/batch.hpp"

namespace gristwright {

struct GristMargin {
    double mass = 0;        // scale resolution, once or (with a tare) twice
    double length = 0;      // the last part turn or the ruler
    double loop = 0;        // size of the reel's or niddy-noddy's loop; shared
    double relaxation = 0;  // how far the skein had relaxed when measured
    double humidity = 0;    // moisture in the fibre; shared

    double whole() const;  // of one skein by itself
    double own() const;    // between skeins measured in one sitting: what they share cancels
};

// `scale_step` must be set in `how` (0 is an exact scale). Skein length and mass must be positive.
GristMargin grist_margin(const Skein& skein, const Measuring& how);

}  // namespace gristwright
