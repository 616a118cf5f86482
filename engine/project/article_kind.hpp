// What is known of a kind of article by its name alone, whoever makes it and of whatever yarn.
// Data: catalog/tables/article_kinds.csv.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright {

struct ArticleKind {
    std::string name;         // "leg warmers"
    bool worn = false;        // by one person: each has their own
    bool draped = false;      // worn, yet no measure of a body decides its size
    bool long_round = false;  // long enough to be wound round a neck
    bool on_feet = false;     // a shoe's size says how large it is
    bool in_pairs = false;
};
using ArticleKinds = std::vector<ArticleKind>;

// The row of that name; of a kind that has none nothing is known.
const ArticleKind& kind_named(const ArticleKinds& kinds, std::string_view name);

}  // namespace gristwright
