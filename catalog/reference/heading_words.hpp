// What people call the columns of a sheet of suggestions: the table
// catalog/tables/suggestion_headings.csv.
#pragma once

#include <string>

#include "catalog/reference/spoken.hpp"

namespace gristwright::catalog {

// Fills the lists "heading", "heading that gives way" and "heading besides" (words that say nothing
// there), each heading by its letters alone, meaning a key of a suggestion. Throws BadText for a
// missing column, a mark that is none, a heading that stands twice.
void read_suggestion_headings(const std::string& text, const std::string& file, SpokenWords& out);

}  // namespace gristwright::catalog
