#include "catalog/typed/colour_reading.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "catalog/text/nearest.hpp"
#include "catalog/typed/written_reading.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::catalog {
namespace {

constexpr std::string_view digits = "0123456789abcdefABCDEF";

// "#48c" is "#4488cc".
Colour of_digits(const std::string& text) {
    const bool brief = text.size() == 4;
    if ((!brief && text.size() != 7) || text.find_first_not_of(digits, 1) != std::string::npos)
        throw Refused(
            fmt::format("'{}' is no colour: after # stand 3 or 6 digits, 0 to 9 and a to f, such "
                        "as #4a8c8c",
                        shown(text)));
    const auto part = [&](std::size_t i) {
        const auto two = brief ? std::string(2, text[1 + i]) : text.substr(1 + 2 * i, 2);
        return double(std::strtol(two.c_str(), nullptr, 16)) / 255;
    };
    return {part(0), part(1), part(2)};
}

Colour read_colour(const std::string& text, const SpokenWords& spoken) {
    if (!text.empty() && text[0] == '#') return of_digits(text);
    if (const auto said = spoken.find("colour", text)) return of_digits(said->means);
    throw Refused(
        fmt::format("'{}' has no colour here, any is written as red, green and blue, such as "
                    "#4a8c8c{}",
                    shown(text), did_you_mean(text, spoken.words("colour"))));
}

}  // namespace

std::vector<Colour> read_colours(const std::string& text, const SpokenWords& spoken) {
    std::vector<Colour> out;
    for (std::size_t from = 0; from <= text.size();) {
        const auto to = std::min(text.find(',', from), text.size());
        out.push_back(read_colour(trimmed(text.substr(from, to - from)), spoken));
        from = to + 1;
    }
    return out;
}

std::string hexadecimal(const Colour& c) {
    const auto part = [](double v) { return int(std::lround(255 * v)); };
    return fmt::format("#{:02x}{:02x}{:02x}", part(c.red), part(c.green), part(c.blue));
}

}  // namespace gristwright::catalog
