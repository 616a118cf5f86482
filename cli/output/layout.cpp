#include "cli/output/layout.hpp"

#include <algorithm>

#include "catalog/text/characters.hpp"
#include "cli/output/line_width.hpp"
#include "engine/units/ascii.hpp"

namespace gristwright::cli {
namespace {

bool starts_character(char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }

// A word of a line; a number keeps its unit, "12 %" and "38.5 g".
std::string_view next_word(std::string_view text) {
    auto end = text.find(' ');
    const auto number = text.substr(0, end);
    if (end == std::string_view::npos || number.empty() || number.back() < '0' ||
        number.back() > '9')
        return number;
    const auto after = text.find(' ', end + 1);
    const auto unit = text.substr(end + 1, after - end - 1);
    return !unit.empty() && unit.size() <= 4 &&
                   unit.find_first_of("0123456789") == std::string_view::npos
               ? text.substr(0, after)
               : number;
}

}  // namespace

std::size_t characters(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text) count += starts_character(c) ? 1 : 0;
    return count;
}

bool fit_together(std::string_view a, std::string_view b, std::size_t most) {
    return a.size() + b.size() <= most || characters(a) + characters(b) <= most;
}

std::string_view first_bytes(std::string_view text, std::size_t most) {
    if (text.size() <= most) return text;
    while (most > 0 && !starts_character(text[most])) --most;
    return text.substr(0, most);
}

std::string padded(std::string text, std::size_t width) {
    const auto wide = characters(text);
    if (wide < width) text.append(width - wide, ' ');
    return text;
}

std::string wrapped(std::string_view text, std::size_t indent) {
    return wrapped(text, indent, line_width());
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t width) {
    std::string out(indent, ' ');
    std::size_t column = indent;
    bool fresh = true;
    while (!text.empty()) {
        const auto word = next_word(text);
        text.remove_prefix(std::min(text.size(), word.size() + 1));
        if (word.empty()) continue;
        const auto wide = characters(word);
        if (!fresh && column + 1 + wide > width) {
            out += "\n" + std::string(indent, ' ');
            column = indent;
            fresh = true;
        }
        if (!fresh) out += ' ', ++column;
        out += word;
        column += wide;
        fresh = false;
    }
    return out;
}

std::string labelled(std::string_view label, std::string_view text, std::size_t indent) {
    const auto hang = indent + characters(label) + 1;
    if (text.empty()) {
        label = label.substr(0, label.find_last_not_of(' ') + 1);
        return std::string(indent, ' ') + std::string(label);
    }
    return std::string(indent, ' ') + std::string(label) + " " + wrapped(text, hang).substr(hang);
}

std::string joined(const std::vector<std::string>& parts, std::string_view separator) {
    std::string out;
    for (const auto& part : parts) {
        if (!out.empty()) out += separator;
        out += part;
    }
    return out;
}

std::string capital(std::string text) {
    if (!text.empty()) text[0] = ascii::upper(text[0]);
    return text;
}

std::string uncapital(std::string text) {
    if (!text.empty()) text[0] = ascii::lower(text[0]);
    return text;
}

std::string inert(std::string_view text) { return catalog::inert(text); }

std::string heading(std::string_view text) { return dyed(text, Dye::heading); }

}  // namespace gristwright::cli
