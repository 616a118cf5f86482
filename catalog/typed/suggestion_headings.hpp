// What people call the columns of a sheet of suggestions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

struct HeadingOfSuggestion {
    std::string_view key;   // of SuggestionText; empty: none of them
    bool weak = false;      // where another column says the key outright, this one is not used
    bool bare_who = false;  // "Who": the sender as often as the wearer
};

// With what stands in brackets or behind it as a unit, and without.
HeadingOfSuggestion heading_of_suggestion(std::string_view header);

}  // namespace gristwright::catalog
