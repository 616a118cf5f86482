// Texts such as people and files hold: long words, other alphabets, markup, broken bytes.
#pragma once

#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace odd {

// Words and numbers with spaces between them, now and then several; harmless UTF-8.
std::string prose(std::mt19937& random, int words);
// Anything at all: prose with markup, controls, marks that turn the writing, broken bytes.
std::string anything(std::mt19937& random, int pieces);

// What stands between spaces and line ends, in order.
std::vector<std::string> words_of(std::string text);

// RFC 3629, section 4: the byte sequences that are UTF-8, and no others.
bool is_utf8(std::string_view text);
// One of the marks that turn the direction of writing: Unicode Standard Annex 9, section 2 (its
// twelve marks, from memory).
bool turns_writing(std::string_view text);

}  // namespace odd
