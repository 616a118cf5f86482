// The words, numbers and signs of what a person wrote. ASCII rules of our own: no locale has a say.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright {

struct Token {
    enum class Kind { word, number, sign };
    Kind kind = Kind::word;
    std::string text;        // small letters, Latin accents folded, curly quotes straight
    std::string typed;       // as it was typed, for a reply
    bool capital = false;    // typed with a capital letter first
    bool new_clause = true;  // the first token, or the first after a sign that ends a clause
};

// At most `most_tokens`, each at most `most_bytes` long; the rest is not read. A hyphen parts two
// words as a space does; "4ply" is a number and a word; an emoji is a word.
inline constexpr std::size_t most_tokens = 160, most_bytes = 40;
std::vector<Token> tokens_of(std::string_view idea);

// "baby's" without what follows the apostrophe; else the word itself.
std::string_view without_possessive(std::string_view word);

}  // namespace gristwright
