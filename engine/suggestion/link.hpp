// How two articles of one idea stand to each other.
#pragma once

#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

enum class Link {
    modifies,  // "hat and mitts" are listed, a "sock blanket" is one thing
    listed,
    of,    // "a border for a shawl"
    with,  // "a hat with mitts"
    as,
    apart,
};

// How the article at `b` stands to the one at `a` before it.
Link link(const std::vector<Item>& items, std::size_t a, std::size_t b);

// "a", "the", "my": an article stands behind it, and no verb.
bool is_determiner(const std::string& text);

// "and" or "or".
bool joins_alike(const Item& item);

}  // namespace gristwright
