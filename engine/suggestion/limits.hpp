// "No more than 150 g", "at least half of it", "200 m or less": what an amount may come to.
#pragma once

#include <string>
#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

enum class Limit { none, most, least };

// What the words right before the amount at that place, or right behind it, make of it.
Limit limit_of(const std::vector<Item>& items, std::size_t at);

// The amount with those words: "at least 200 g".
std::string limited(const std::vector<Item>& items, std::size_t at);

}  // namespace gristwright
