#include "catalog/typed/number_words.hpp"

#include <algorithm>
#include <charconv>

#include "engine/units/ascii.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::size_t most_words = 4;  // of a phrase of the table

bool in_word(char c) { return ascii::is_letter(c) || static_cast<unsigned char>(c) >= 0x80; }

// Where the word at the front ends.
std::size_t word_end(std::string_view text, std::size_t from = 0) {
    while (from < text.size() && (in_word(text[from]) || text[from] == '\'')) ++from;
    return from;
}

std::string_view without_space(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    return text;
}

// The longest phrase of the table at the front, taken off.
std::optional<double> take_phrase(std::string_view& text, const SpokenWords& spoken) {
    std::size_t ends[most_words] = {}, count = 0;
    for (std::size_t at = 0; count < most_words && at < text.size();) {
        const auto end = word_end(text, at);
        if (end == at) break;
        ends[count++] = end;
        if (end >= text.size() || (text[end] != ' ' && text[end] != '-')) break;
        at = end + 1;
    }
    for (auto n = count; n-- > 0;) {
        const auto said = spoken.find("number", text.substr(0, ends[n]));
        if (!said) continue;
        double value = 0;
        std::from_chars(said->means.data(), said->means.data() + said->means.size(), value);
        text = without_space(text.substr(ends[n]));
        return value;
    }
    return {};
}

bool take_word(std::string_view& text, std::string_view word) {
    if (!text.starts_with(word) || word_end(text) != word.size()) return false;
    text = without_space(text.substr(word.size()));
    return true;
}

bool is_round(double value) { return value == 100 || value == 1000; }

// "and a half" behind a unit: "a pound and a half".
std::optional<double> take_and_part(std::string_view& text, const SpokenWords& spoken) {
    auto ahead = text;
    if (!take_word(ahead, "and")) return {};
    const auto part = take_phrase(ahead, spoken);
    if (!part || *part >= 1 || !(ahead.empty() || ahead.starts_with(','))) return {};
    text = ahead;
    return part;
}

std::string_view unit_at(std::string_view text) {
    const auto word = text.substr(0, word_end(text));
    return unit_word(word) ? word : std::string_view();
}

// The figure, ready for what follows; "a pound and a half" is taken with its unit.
std::string written(double value, std::string_view& rest, const SpokenWords& spoken) {
    if (const auto unit = unit_at(rest); !unit.empty()) {
        auto behind = without_space(rest.substr(unit.size()));
        if (const auto part = take_and_part(behind, spoken)) {
            rest = behind;
            return plainly(value + *part) + " " + std::string(unit);
        }
    }
    const bool times = !rest.empty() && ascii::is_digit(rest[0]);
    return plainly(value) + (times ? " x " : rest.empty() || !in_word(rest[0]) ? "" : " ");
}

}  // namespace

std::optional<double> take_number_words(std::string_view& words, const SpokenWords& spoken) {
    auto value = take_phrase(words, spoken);
    if (!value) return {};
    for (;;) {
        auto ahead = words;
        if (*value >= 100) take_word(ahead, "and");
        if (*value >= 20 && ahead.starts_with('-')) ahead.remove_prefix(1);
        const auto more = take_phrase(ahead, spoken);
        const bool ones = more && *more < 10 && *value >= 20 && *value < 100 &&
                          *more == static_cast<int>(*more) && *more > 0;
        const bool rest = more && *value >= 100 && *more < 100 && *more >= 1;
        if (more && is_round(*more) && *value < *more)
            *value *= *more;
        else if (ones || rest)
            *value += *more;
        else
            return value;
        words = ahead;
    }
}

std::string in_figures(const std::string& text, const SpokenWords& spoken) {
    const auto typed = plain(text);
    std::string out;
    bool found = false;
    for (std::string_view rest = typed; !rest.empty();) {
        const bool begins = out.empty() || (!in_word(out.back()) && out.back() != '\'');
        const bool figure = !out.empty() && (ascii::is_digit(out.back()) || out.ends_with(". "));
        auto ahead = rest;
        std::optional<double> value;
        if (begins && !figure) value = take_number_words(ahead, spoken);
        if (!value && begins && (take_word(ahead, "a") || take_word(ahead, "an")) &&
            !unit_at(ahead).empty()) {
            if (out.ends_with(" of ")) {  // "3/4 of a pound"
                out.resize(out.size() - 3);
                rest = ahead;
                found = true;
                continue;
            }
            value = 1;
        }
        if (!value) {
            out += rest.front();
            rest.remove_prefix(1);
            continue;
        }
        found = true;
        rest = ahead;
        out += written(*value, rest, spoken);
    }
    return found ? out : text;
}

}  // namespace gristwright::catalog
