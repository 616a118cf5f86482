// Knows only the rules, shares no code with the search, and looks every answer over.
#pragma once

#include <string>

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

// The first rule that the list breaks, or an empty text. Its worth must be exactly what the rules
// say it is.
std::string broken_rule(const Problem& problem, const CutList& list);

// What the rules say the list is worth; the list must break none.
Points worth(const Problem& problem, const CutList& list);

}  // namespace gristwright::allocation
