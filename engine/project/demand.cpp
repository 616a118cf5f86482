#include "engine/project/demand.hpp"

#include <algorithm>

namespace gristwright {

double Demand::met(double had) const {
    return std::clamp((had - lacking) / (enough - lacking), 0.0, 1.0);
}

}  // namespace gristwright
