#include "catalog/typed/age_reading.hpp"

#include <fmt/core.h>

#include <array>

#include "engine/units/has.hpp"
#include "engine/units/plain.hpp"
#include "engine/units/scanner.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::array before{"for",      "fits",     "to fit",   "size",   "a",
                            "toddler",  "toddlers", "baby",     "babies", "child",
                            "children", "childs",   "child's",  "kids",   "kid's",
                            "kid",      "newborn",  "newborns", ":",      ","};
constexpr std::array months{"months", "month", "mths", "mth", "mos", "mo", "mnths"};
constexpr std::array years{"years", "year", "yrs", "yr", "yo", "y/o", "t"};

// "newborn", "toddler": who it is for is said by the word alone.
bool says_whom(const std::string& typed) {
    constexpr std::array small{"newborn",  "newborns", "baby", "babies", "toddler",
                               "toddlers", "child",    "kid",  "kids",   "children"};
    return has(small, typed);
}

}  // namespace

std::string as_age(const std::string& text, bool no_length) {
    const auto typed = plain(text);
    Scanner from(typed);
    bool of_age = false;
    for (;;)
        if (from.any(std::array{"aged", "ages", "age"}))
            of_age = true;
        else if (!from.any(before))
            break;
    if (from.done() && says_whom(typed)) return typed;
    const auto low = from.number(Fractions::mixed);
    if (!low) return "";
    auto high = low;
    from.any(months);
    if (from.sign('-') || from.take("to")) high = from.number(Fractions::mixed);
    if (!high || high->value < low->value || high->value != static_cast<int>(high->value))
        return "";
    from.sign('-');
    const bool in_months = from.any(months) || (no_length && from.take("m"));
    const bool in_years = from.any(years);
    if (!in_months && !in_years && !(of_age && from.done())) return "";
    from.sign('.');
    from.any(std::array{"-old", "old"});
    if (!from.done()) return "";
    return fmt::format("{} {} old", static_cast<int>(high->value), in_months ? "month" : "year");
}

}  // namespace gristwright::catalog
