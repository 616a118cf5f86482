#include "catalog/typed/age_reading.hpp"

#include <fmt/core.h>

#include <array>

#include "engine/units/plain.hpp"
#include "engine/units/scanner.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::array before{"for",     "fits",    "to fit",   "size", "aged",   "ages",  "age",
                            "a",       "toddler", "toddlers", "baby", "babies", "child", "childs",
                            "child's", "kids",    "kid's",    "kid",  ":",      ","};
constexpr std::array months{"months", "month", "mths", "mth", "mos", "mo", "mnths"};
constexpr std::array years{"years", "year", "yrs", "yr", "yo", "y/o", "t"};

}  // namespace

std::string as_age(const std::string& text, bool no_length) {
    const auto typed = plain(text);
    Scanner from(typed);
    while (from.any(before)) {
    }
    const auto low = from.number(Fractions::mixed);
    if (!low) return "";
    auto high = low;
    from.any(months);
    if (from.sign('-') || from.take("to")) high = from.number(Fractions::mixed);
    if (!high || high->value < low->value || high->value != static_cast<int>(high->value))
        return "";
    from.sign('-');
    const bool in_months = from.any(months) || (no_length && from.take("m"));
    if (!in_months && !from.any(years)) return "";
    from.sign('.');
    from.any(std::array{"-old", "old"});
    if (!from.done()) return "";
    return fmt::format("{} {} old", static_cast<int>(high->value), in_months ? "month" : "year");
}

}  // namespace gristwright::catalog
