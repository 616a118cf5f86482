// What a word is worth where no step of reading took it, and how it is told.
#pragma once

#include <string>
#include <vector>

#include "engine/suggestion/items.hpp"

namespace gristwright {

// A word that nobody gave a meaning: of every day, or in no table.
bool is_plain(const Item& item);
// How a thing is made: "lined", "reversible", "sideways".
bool is_of_making(const Item& item);
// A button, a ribbon, a zip.
bool is_trimming(const Item& item);

// What may stand between a word and the article that it describes.
bool describes_too(const Item& item);

bool same_clause(const std::vector<Item>& items, std::size_t a, std::size_t b);
// Right before an article, or before what describes it too.
bool before_article(const std::vector<Item>& items, std::size_t at);

// What is told in more words than its own: "up to the elbow", "tea towel sized"; empty: its own do.
std::string said_in_full(const std::vector<Item>& items, std::size_t at);

}  // namespace gristwright
