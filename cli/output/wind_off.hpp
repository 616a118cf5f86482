// What of each skein goes into a plan, one after another or two by turns.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright::cli {

struct FromSkein {
    std::size_t skein = 0;
    Length takes;
    Length stays;  // in the ball
};

// For what is set aside for the plan.
std::vector<FromSkein> wind_off(const Plan& plan, const YarnProfile& yarn);

}  // namespace gristwright::cli
