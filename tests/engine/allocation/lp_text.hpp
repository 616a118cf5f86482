// The problem as a mixed-integer program in LP format, metres and points, for other solvers.
// Written from the rules alone: shares nothing with the search.
#pragma once

#include <string>

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

std::string lp_text(const Problem& problem);

// What the LP leaves out of its objective: the bonus of every skein, in points.
double constant_of(const Problem& problem);

}  // namespace gristwright::allocation
