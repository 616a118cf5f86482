// Things beside the idea that are there already: "under a wax jacket", "to match my scarf".
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// They become idle where another thing is wanted.
void set_things_at_hand_aside(std::vector<Item>& items);

}  // namespace gristwright
