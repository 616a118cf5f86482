// For whom it is: of several who are named the one that calls for the most care.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// "for my mum", "my niece needs one", "out with the dog" (for nobody). Sets who wears it, whose
// body gives the size, and kin whose age is not known.
void take_persons(std::vector<Item>& items, Taken& out);

}  // namespace gristwright
