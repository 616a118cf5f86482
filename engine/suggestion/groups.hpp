// Many suggestions answered for one batch: those alike together, the best first.
#pragma once

#include <deque>
#include <string>
#include <unordered_map>
#include <vector>

#include "engine/suggestion/answer.hpp"

namespace gristwright {

struct SuggestionGroup {
    struct Row {
        std::size_t number = 0;
        std::string idea, from;  // empty in the first row, whose are the suggestion's
    };
    std::vector<Row> rows;  // in their order
    double rank = 0;        // higher first
    Suggestion suggestion;  // the first of them

    // An idea in the words of the first row is not kept twice.
    const std::string& idea_of(const Row& row) const {
        return row.idea.empty() ? suggestion.idea : row.idea;
    }
    const std::string& sender_of(const Row& row) const {
        return &row == &rows.front() ? suggestion.from : row.from;
    }
};

// Alike: read alike, and so answered alike; amounts and sizes within a few per cent of each other.
class SuggestionGroups {
  public:
    void add(std::size_t row, Suggestion suggestion, const SuggestionAnswer& answer);
    // What serves best and reaches first, then what is short, what is asked back, what is no idea;
    // of the same rank by their first row. They stand here until another is added.
    std::vector<const SuggestionGroup*> ranked() const;

  private:
    // Of a hundred thousand likenesses the texts would take more room than all else: 128 bits of
    // each tell them apart.
    struct Key {
        std::size_t one = 0, two = 0;
        bool operator==(const Key&) const = default;
    };
    struct KeyHash {
        std::size_t operator()(const Key& key) const { return key.one; }
    };
    static Key key_of(const std::string& likeness);

    std::unordered_map<Key, std::size_t, KeyHash> places_;
    std::deque<SuggestionGroup> groups_;
};

}  // namespace gristwright
