#include "catalog/text/words_of.hpp"

#include "engine/units/ascii.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words(1);
    std::size_t since = 0;  // letters behind the last full stop
    for (const char c : plain(text)) {
        auto& word = words.back();
        if (ascii::is_letter(c) || static_cast<unsigned char>(c) >= 0x80)
            word += c, ++since;
        else if (c == '.' && since == 1)
            since = 0;
        else if (!word.empty())
            words.emplace_back(), since = 0;
    }
    if (words.back().empty()) words.pop_back();
    return words;
}

std::string joined_words(std::string_view text) {
    std::string out;
    for (const auto& word : words_of(text)) out += word;
    return out;
}

}  // namespace gristwright::catalog
