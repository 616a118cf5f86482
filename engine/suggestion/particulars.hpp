// What tells one wanted thing from another of its kind: its colours, one of a pair, one of each
// craft.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// A colour by its name: not "dyed", nor "bright".
bool is_a_colour(const Item& item);

// "in five colours", "in grey and brown": more than one needs another yarn.
void take_colours(std::vector<Item>& items, Taken& out);

// "one sock": half of what a pair takes.
void take_one_alone(const std::vector<Item>& items, Taken& out);

// "two scarves, one woven, one knitted": each a thing of its own.
void part_by_craft(const std::vector<Item>& items, Taken& out);

}  // namespace gristwright
