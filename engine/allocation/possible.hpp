// Whether any plan exists at all, whatever it is worth.
#pragma once

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

// False also when `nodes` nodes of search neither find a plan nor rule one out.
bool possible(const Problem& problem, int nodes);

}  // namespace gristwright::allocation
