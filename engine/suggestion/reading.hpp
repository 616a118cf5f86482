// The steps of reading an idea, in their order. Each takes the items and writes what it found.
#pragma once

#include "engine/suggestion/items.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

// Remarks about other things ("my jumper got moths") become idle; what a negation rules out is
// marked and told.
void set_remarks_aside(std::vector<Item>& items);
void rule_out(std::vector<Item>& items, Taken& out);

// Things that no template makes are marked, and told where an article stands beside them.
void find_strangers(std::vector<Item>& items, const ArticleKinds& kinds, Taken& out);

// The articles that are wanted, each with its form, its fabric and how many.
// Their places in the items come back.
std::vector<std::size_t> take_things(std::vector<Item>& items, const ArticleKinds& kinds,
                                     Taken& out);

// Crafts, roles, wearers, ways of making, weights, topics.
void take_words(std::vector<Item>& items, Taken& out);

// Measures go to the article or the trade word beside them.
void take_measures(std::vector<Item>& items, Taken& out);

// Where each article of `out.wanted` stands in the items; kept by take_things for take_measures.
bool is_thing(const Item& item);

// Something for the feet is wanted: a size may be a shoe's.
bool is_for_the_foot(const Taken& taken);

// The kind that an article means; the word itself where it names none.
std::string kind_of(const Item& article);

// The fabrics that a word for one means, in either craft.
NamedFabric fabric_of(const Item& fabric);

}  // namespace gristwright
