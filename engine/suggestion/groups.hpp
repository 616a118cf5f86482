// Many suggestions answered for one batch: those alike together, the best first.
#pragma once

#include <string>
#include <unordered_map>
#include <vector>

#include "engine/suggestion/answer.hpp"

namespace gristwright {

struct SuggestionGroup {
    std::vector<std::size_t> rows;            // in their order
    std::vector<std::string> ideas, senders;  // of those rows, as they wrote
    double rank = 0;                          // higher first
    Suggestion suggestion;                    // the first of them
};

// Alike: read alike, and so answered alike; amounts and sizes within a few per cent of each other.
class SuggestionGroups {
  public:
    void add(std::size_t row, Suggestion suggestion, const SuggestionAnswer& answer);
    // What serves best and reaches first, then what is short, what is asked back, what is no idea;
    // of the same rank by their first row.
    std::vector<SuggestionGroup> ranked() const;

  private:
    std::unordered_map<std::string, std::size_t> places_;
    std::vector<SuggestionGroup> groups_;
};

}  // namespace gristwright
