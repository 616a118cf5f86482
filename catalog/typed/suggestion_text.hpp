// A suggestion as a person writes it: options, or a row of a spreadsheet with headers in their own
// words. Format: docs/suggestions.md.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"
#include "engine/suggestion/suggestion.hpp"

namespace gristwright::catalog {

// By key: idea, craft, needs, weight, grist, gauge, sett, needle, size, colours, who, from, when.
using SuggestionText = std::map<std::string, std::string, std::less<>>;

// Throws Refused naming the key and what would be right. Empty texts are not given.
Suggestion read_suggestion(const SuggestionText& text, const Catalogue& catalogue);

// A cell beside the idea that cannot be read.
struct LeftOutCell {
    std::string key, text;
    std::string why;  // naming the key, and what would be right
};

// A row of a sheet: the idea is read whatever stands beside it.
struct ReadRow {
    Suggestion suggestion;
    std::vector<LeftOutCell> left_out;
};
ReadRow read_row(const SuggestionText& text, const Catalogue& catalogue);

}  // namespace gristwright::catalog
