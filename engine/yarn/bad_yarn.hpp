// A batch that cannot be, or is very unlikely to be, yarn.
#pragma once

#include <stdexcept>

#include "engine/units/failure.hpp"

namespace gristwright {

// `likely_slip` is true when insisting is allowed ("51 yd weighing 248 g? swapped?").
struct ImplausibleYarn : Refused {
    ImplausibleYarn(const std::string& why, bool likely_slip)
        : Refused(why), may_insist(likely_slip) {}
    bool may_insist;
};

}  // namespace gristwright
