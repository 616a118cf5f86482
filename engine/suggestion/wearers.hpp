// Shares of what is wanted, and one wanted thing that is for several people.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// "half a blanket", "a quarter of a sweater"; "a pullover out of half of the yarn".
void take_shares(const std::vector<Item>& items, Taken& out);

// "two hats, one for a man and one for a toddler", "mittens for children aged 4 and 8": each a
// thing of its own, since each has its own size.
void part_by_wearer(const std::vector<Item>& items, Taken& out);

// "a hat for grandpa and mittens for the baby": each thing for its own. The places are those of
// `out.wanted` in the items.
void part_by_thing(const std::vector<Item>& items, const std::vector<std::size_t>& places,
                   Taken& out);

}  // namespace gristwright
