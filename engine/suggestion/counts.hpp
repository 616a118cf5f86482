// How many of each thing are wanted.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// "six beanies", "cowls for two sisters", "hats for the twins"; `places` are those of `out.wanted`
// in the items. What was counted is used up.
void take_counts(std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out);

}  // namespace gristwright
