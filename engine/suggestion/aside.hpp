// What was heard as talk beside an idea, so that a reply can say so: a wish taken for a tale is
// then seen by the person who had it.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// The things and measures that are set aside so far.
std::vector<std::size_t> set_aside(const std::vector<Item>& items);

// Tells those that no reading took after all, at most three of them, in `out.aside`.
void tell_aside(const std::vector<Item>& items, const std::vector<std::size_t>& places, Taken& out);

}  // namespace gristwright
