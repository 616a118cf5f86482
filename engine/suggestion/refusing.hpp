// What is refused by the words behind it: "napkins, no", "a scarf? Nope", "scarves are boring".
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// Whether the thing, the fabric or the weight at that place is turned down behind its name.
bool is_refused(const std::vector<Item>& items, std::size_t at);

}  // namespace gristwright
