#include "catalog/typed/size_reading.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <sstream>

#include "catalog/text/words_of.hpp"
#include "catalog/typed/age_reading.hpp"
#include "catalog/typed/number_words.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/has.hpp"
#include "engine/units/measure.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view right_size = "such as 150cm, 60 x 8 in, adult M, shoe 42 or 6-12 months";

bool digit_at(std::string_view text, std::size_t at) {
    return at < text.size() && ascii::is_digit(text[at]);
}

// `5'` is "5 ft", `22"` "22 in", "4 ft 6" "4 ft 6 in", "1m40" "1.40 m": as the ideas' reader has
// them.
std::string spelt_out(const std::string& typed) {
    std::string out;
    bool feet = false;
    for (std::size_t i = 0; i < typed.size(); ++i) {
        const bool behind = i > 0 && ascii::is_digit(typed[i - 1]);
        const bool metres = typed[i] == 'm' && behind && digit_at(typed, i + 1) &&
                            digit_at(typed, i + 2) && !digit_at(typed, i + 3);
        if (behind && typed[i] == '\'')
            out += " ft ", feet = true;
        else if (behind && typed[i] == '"')
            out += " in ", feet = false;
        else if (metres)
            out += "." + typed.substr(i + 1, 2) + " m", i += 2;
        else
            out += typed[i];
    }
    const auto end = out.find_last_not_of("0123456789");
    feet = feet || (end != std::string::npos && out.substr(0, end + 1).ends_with("ft "));
    return feet && digit_at(out, out.size() - 1) ? out + " in" : plain(out);
}

// Every word is one that sizes are told with, so that nothing is taken out of a remark.
bool tells_a_size(const std::string& typed, const SpokenWords& spoken) {
    const auto words = words_of(typed);
    const bool negative = typed.starts_with('-') && digit_at(typed, 1);
    return !negative && !words.empty() &&
           std::all_of(words.begin(), words.end(), [&](const auto& word) {
               const auto* unit = unit_word(word);
               return (unit && unit->dimension == Dimension::length) ||
                      spoken.find("size word", word);
           });
}

bool has_unit(const std::string& typed) {
    const auto words = words_of(typed);
    return std::any_of(words.begin(), words.end(),
                       [](const auto& word) { return unit_word(word); });
}

// "shoe 42" is "42", "US mens 9 foot" is "us mens 9": no foot of twelve inches.
std::string without_shoe(const std::string& typed) {
    const auto words = words_of(typed);
    constexpr std::array makers{"us", "uk", "eu", "mens", "womens", "ladies", "men", "women"};
    if (!has_any(makers, words) && !has_any(std::array{"shoe", "shoes"}, words)) return typed;
    constexpr std::array besides{"shoe", "shoes", "size", "foot", "feet"};
    std::string out;
    std::istringstream parts(typed);
    for (std::string word; parts >> word;)
        if (!has(besides, word)) out += (out.empty() ? "" : " ") + word;
    return out;
}

}  // namespace

SizeSaid read_size(const std::string& text, const SpokenWords& spoken) {
    if (auto age = as_age(text, false); !age.empty()) return {{}, std::move(age), {}};
    const auto said = spelt_out(plain(text)), typed = without_shoe(said);
    if (typed != said) return {{}, {}, "size " + typed};
    try {
        return {read_length(spelt_out(plain(in_figures(text, spoken)))).value, {}, {}};
    } catch (const Unclear&) {
        throw;
    } catch (const Unreadable&) {
        if (spoken.find("size letters", typed)) return {{}, {}, typed};
        if (spoken.find("size letters", typed + " size")) return {{}, {}, typed + " size"};
        if (!as_age(text, true).empty())
            throw Unclear(text, "months of age, or metres", "such as 6 months, or 3 m");
        // "size 6 ft" is of a shoe: what has its unit is said without that word.
        if (spoken.find("size letters", "size " + typed) || tells_a_size(typed, spoken))
            return {{}, {}, (has_unit(typed) ? "" : "size ") + typed};
        if (typed.find_first_not_of("0123456789.,x ") == std::string::npos)
            throw Unclear(text, "centimetres or inches", right_size);
        throw Refused(
            fmt::format("cannot read '{}' as a size; write it {}", shown(text), right_size));
    }
}

}  // namespace gristwright::catalog
