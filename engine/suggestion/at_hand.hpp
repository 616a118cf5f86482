// Things beside the idea that are there already: "under a wax jacket", "to match my scarf".
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// They become idle where another thing is wanted. The places of those come back that somebody is
// said to have: others ("under a jacket") nobody takes for a wish.
std::vector<std::size_t> set_things_at_hand_aside(std::vector<Item>& items);

// "I have two hats to make": had in mind alone.
bool is_only_planned(const std::vector<Item>& items, std::size_t at);

}  // namespace gristwright
