// What was said of the thing that is wanted and that no step of reading took: it is told, never
// dropped in silence.
#pragma once

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// Writes `left_out`, as it was typed, and `how_big` ("big", "skinny"), after all else was read.
void find_leftovers(const std::vector<Item>& items, Taken& out);

}  // namespace gristwright
