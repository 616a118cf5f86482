#include "cli/output/units_in_words.hpp"

#include <fmt/core.h>

#include <array>
#include <charconv>
#include <cmath>

namespace gristwright::cli {
namespace {

// As a ruler in quarters shows it: "3 1/4 in"; from ten on whole.
std::string on_a_ruler(Length q) {
    if (in_inches(q) >= 9.875) return fmt::format("{:.0f} in", in_inches(q));
    static constexpr std::array<const char*, 4> parts{"", "1/4", "1/2", "3/4"};
    const auto quarters = std::max<long>(1, std::lround(4 * in_inches(q)));
    const auto whole = quarters / 4;
    const auto* part = parts[static_cast<std::size_t>(quarters % 4)];
    return fmt::format("{}{}{} in", whole > 0 ? fmt::format("{}", whole) : "",
                       whole > 0 && *part ? " " : "", part);
}

std::string in_imperial(double value, std::string_view unit) {
    if (unit == "cm") return on_a_ruler(centimetres(value));
    if (unit == "mm") return on_a_ruler(millimetres(value));
    if (unit == "m") return fmt::format("{:.2g} yd", in_yards(metres(value)));
    return fmt::format("{:.2g} oz", in_ounces(grams(value)));
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '/'; }

// The unit that a text begins with, after a space; empty when it is another word.
std::string_view unit_at(std::string_view text) {
    if (text.empty() || text[0] != ' ') return {};
    for (const std::string_view unit : {"cm", "mm", "m", "g"}) {
        const auto after = text.substr(1);
        if (after.substr(0, unit.size()) == unit &&
            (after.size() == unit.size() || !is_letter(after[unit.size()])))
            return unit;
    }
    return {};
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

std::string in_units(std::string_view text, const Units& units) {
    if (!units.imperial()) return std::string(text);
    std::string out;
    while (!text.empty()) {
        if (!is_digit(text[0])) {
            out += text[0];
            text.remove_prefix(1);
            continue;
        }
        double value = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
        const auto number = static_cast<std::size_t>(read.ptr - text.data());
        const auto unit = unit_at(text.substr(number));
        out += unit.empty() ? std::string(text.substr(0, number)) : in_imperial(value, unit);
        text.remove_prefix(number + (unit.empty() ? 0 : 1 + unit.size()));
    }
    return out;
}

}  // namespace gristwright::cli
