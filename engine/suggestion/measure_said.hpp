// What is said of a measure beside it: which measure of the thing it is, and whose.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// The tool word beside it: after it first, then before it, within so many items of its clause.
std::string tool_beside(const std::vector<Item>& items, std::size_t at, std::size_t reach);
// A tool word of that meaning anywhere in the sentence.
bool sentence_has(const std::vector<Item>& items, std::size_t at, std::string_view what);
// "my own 320 m": what there is.
bool says_own_yarn(const std::vector<Item>& items, std::size_t at);
// "30 m each", "100 g apiece".
bool is_of_each(const std::vector<Item>& items, std::size_t at);
// "150 cm long", "60 inches in length".
bool is_said_long(const std::vector<Item>& items, std::size_t at);
// "9 inches tall", "20 cm deep".
bool is_said_tall(const std::vector<Item>& items, std::size_t at);

}  // namespace gristwright
