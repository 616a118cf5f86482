// What is told and not wished: what somebody did, lost or has, what is asked of people in the room.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// "My late husband wore the one jumper for forty years", "whoever left a hat on the rack", "please
// move her afghan": their things are there already. Their clauses become idle up to a wish.
void set_tales_aside(std::vector<Item>& items);

}  // namespace gristwright
