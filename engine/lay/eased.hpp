// A way from 0 to 1 that sets out and arrives slowly.
#pragma once

#include <algorithm>

namespace gristwright::lay {

inline double eased(double t) {
    t = std::clamp(t, 0.0, 1.0);
    return t * t * (3 - 2 * t);
}

}  // namespace gristwright::lay
