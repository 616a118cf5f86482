// A suggestion as a person writes it: options, or a row of a spreadsheet with headers in their own
// words. Format: docs/suggestions.md.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "catalog/text/csv.hpp"
#include "engine/suggestion/suggestion.hpp"
#include "engine/yarn/weight_class.hpp"

namespace gristwright::catalog {

// By key: idea, craft, needs, weight, grist, gauge, sett, needle, size, colours, who, from, when.
using SuggestionText = std::map<std::string, std::string, std::less<>>;

// Throws Refused naming the key and what would be right. Empty texts are not given.
Suggestion read_suggestion(const SuggestionText& text, const std::vector<WeightClass>& classes);

}  // namespace gristwright::catalog
