// What people call the columns of a sheet of suggestions: the table
// catalog/tables/suggestion_headings.csv (reference/heading_words.hpp).
#pragma once

#include <string>
#include <string_view>

#include "catalog/reference/spoken.hpp"

namespace gristwright::catalog {

struct HeadingOfSuggestion {
    std::string key;        // of SuggestionText; empty: none of them
    bool weak = false;      // where another column says the key outright, this one is not used
    bool bare_who = false;  // "Who": the sender as often as the wearer
};

// With what stands in brackets or behind it as a unit, and without; spaces and signs do not matter.
HeadingOfSuggestion heading_of_suggestion(std::string_view header, const SpokenWords& spoken);

}  // namespace gristwright::catalog
