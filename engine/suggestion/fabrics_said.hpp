// The fabrics and the crafts that are said, and the thing that each is said of.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// "a hat in garter and a woven scarf", "socks and a scarf in 2x2 rib"; `places` are those of
// `out.wanted` in the items.
void take_fabrics(std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out);

// The thing that a word at `at` belongs to: the next before a sign or a joiner; else the last one
// before. Nothing where no thing is wanted.
Wanted* nearest_thing(const std::vector<Item>& items, const std::vector<std::size_t>& places,
                      std::size_t at, Taken& out);

// "with long cuffs": what another thing has.
bool is_had(const std::vector<Item>& items, std::size_t at);

// "brim", "heels": a part that may be of another fabric than the whole.
bool is_an_edge(const Item& item);

}  // namespace gristwright
