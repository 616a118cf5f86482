// A question on which nothing here has a word: it is told rather than passed over.
#pragma once

#include <string>
#include <vector>

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// "how many repeats", "how many rows": of no article, so no count of ours.
bool counts_something_else(const std::vector<Item>& items, std::size_t at);

// As it was typed, without its mark; empty: nothing is asked, a topic has it, or the question is
// only how somebody suggests a thing ("could you make a hat?", "isn't it crying out for a cowl?").
std::string unanswered(const std::vector<Item>& items);

}  // namespace gristwright
