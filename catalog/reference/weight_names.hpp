// What the trade calls the weight classes: the table catalog/tables/weight_names.csv, read in a
// cell or an option as in the words of an idea.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "engine/yarn/weight_class.hpp"

namespace gristwright::catalog {

// Fills the list "weight", each name meaning its class or a question, and adds the names that are
// clear in an idea too to the lines of `words` (engine/suggestion/lexicon.hpp). Throws BadText for
// a class that is not in `classes`, a mark that is none, a name that stands twice.
void read_weight_names(const std::string& text, const std::string& file,
                       const std::vector<WeightClass>& classes, SpokenWords& out,
                       std::string& words);

}  // namespace gristwright::catalog
