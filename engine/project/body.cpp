#include "engine/project/body.hpp"

#include <algorithm>

#include "engine/units/ascii.hpp"

namespace gristwright {
namespace {

// Small letters and digits as words: "Women's L" -> women, s, l.
std::vector<std::string> tokens(std::string_view said) {
    std::vector<std::string> out(1);
    bool digits = false;
    for (const char c : said) {
        const bool digit = ascii::is_digit(c);
        if (!digit && !ascii::is_letter(c)) {
            out.emplace_back();
            continue;
        }
        if (!out.back().empty() && digit != digits) out.emplace_back();
        digits = digit;
        out.back() += ascii::lower(c);
    }
    std::erase_if(out, [](const auto& word) { return word.empty(); });
    return out;
}

bool any(const std::vector<std::string>& words, std::initializer_list<std::string_view> of) {
    return std::any_of(words.begin(), words.end(), [&](const auto& word) {
        return std::find(of.begin(), of.end(), word) != of.end();
    });
}

// "", or " M": a clothing size by its letters or its name; 2X is two words here.
std::string letter(const std::vector<std::string>& words) {
    if (any(words, {"xs"})) return " XS";
    if (any(words, {"xl", "1"}) && !any(words, {"2"})) return " XL";
    if (any(words, {"xxl", "2"})) return " 2X";
    if (any(words, {"s", "small"}) && !any(words, {"l", "m", "large", "medium"})) return " S";
    if (any(words, {"m", "medium"})) return " M";
    if (any(words, {"l", "large"})) return " L";
    return "";
}

}  // namespace

std::string body_named(std::string_view said) {
    const auto words = tokens(said);
    const auto number = std::find_if(
        words.begin(), words.end(), [](const auto& word) { return ascii::is_digit(word.front()); });
    if (any(words, {"newborn", "birth"})) return "newborn";
    if (any(words, {"woman", "women", "lady", "ladies"})) return "woman" + letter(words);
    if (any(words, {"man", "men", "gentleman"})) return "man" + letter(words);
    if (number == words.end()) return std::string(said);
    if (any(words, {"month", "months", "mo", "mos"})) return *number + " months";
    if (words.size() == 1 || any(words, {"child", "age", "aged", "year", "years", "old", "yr", "y",
                                         "kid", "boy", "girl", "toddler"}))
        return "child " + *number;
    return std::string(said);
}

const BodySize* body_size(const std::vector<BodySize>& rows, std::string_view who,
                          std::string_view measure) {
    for (const auto& row : rows)
        if (row.who == who && row.measure == measure) return &row;
    return nullptr;
}

}  // namespace gristwright
