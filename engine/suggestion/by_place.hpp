// A thing without a name, by where it goes: "the thing that goes round the neck".
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// The item that says where; as many as there are items: none does.
std::size_t place_of_a_thing(const std::vector<Item>& items);

// What goes there: any of them would do.
std::vector<Wanted> things_for(const Item& place, const ArticleKinds& kinds);

}  // namespace gristwright
