#include "cli/output/layout.hpp"

#include <unistd.h>

#include <cstdlib>

namespace gristwright::cli {
namespace {

bool starts_character(char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }

// No overlong form, no surrogate, nothing beyond U+10FFFF (RFC 3629, section 4).
bool may_follow(unsigned char lead, unsigned char second) {
    switch (lead) {
        case 0xE0:
            return second >= 0xA0;
        case 0xED:
            return second < 0xA0;
        case 0xF0:
            return second >= 0x90;
        case 0xF4:
            return second < 0x90;
        default:
            return true;
    }
}

// Length of the well-formed UTF-8 character at the start of `text`; 0: none there.
std::size_t character_size(std::string_view text) {
    const auto lead = static_cast<unsigned char>(text[0]);
    const std::size_t size = lead < 0x80                    ? 1
                             : lead >= 0xC2 && lead < 0xE0  ? 2
                             : lead >= 0xE0 && lead < 0xF0  ? 3
                             : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                            : 0;
    if (size == 0 || size > text.size()) return 0;
    for (std::size_t i = 1; i < size; ++i)
        if (starts_character(text[i])) return 0;
    return size > 1 && !may_follow(lead, static_cast<unsigned char>(text[1])) ? 0 : size;
}

// Controls, and the marks that turn the direction of writing or hide (general punctuation).
bool drives(std::string_view character) {
    const auto lead = static_cast<unsigned char>(character[0]);
    if (character.size() == 1) return lead < 0x20 || lead == 0x7F;
    if (character.size() == 2)
        return (lead == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0) ||
               character == "\xD8\x9C";  // the Arabic letter mark
    if (character.size() != 3 || lead != 0xE2) return character.substr(0, 3) == "\xEF\xBB\xBF";
    const auto second = static_cast<unsigned char>(character[1]);
    const auto third = static_cast<unsigned char>(character[2]);
    return (second == 0x80 &&
            ((third >= 0x8B && third <= 0x8F) || (third >= 0xA8 && third <= 0xAE))) ||
           (second == 0x81 && third >= 0xA0 && third <= 0xAF);
}

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

bool wants_colour() {
    const char* term = std::getenv("TERM");
    const char* no_colour = std::getenv("NO_COLOR");
    return isatty(STDOUT_FILENO) == 1 && !(no_colour && *no_colour) && term &&
           std::string_view(term) != "dumb";
}

}  // namespace

std::size_t characters(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text) count += starts_character(c) ? 1 : 0;
    return count;
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
    std::string out(indent, ' ');
    std::size_t column = indent;
    bool fresh = true;
    while (!text.empty()) {
        const auto word = next_word(text);
        text.remove_prefix(std::min(text.size(), word.size() + 1));
        if (word.empty()) continue;
        const auto wide = characters(word);
        if (!fresh && column + 1 + wide > text_width) {
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
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string inert(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const auto size = character_size(text);
        const auto character = text.substr(0, std::max<std::size_t>(1, size));
        out += size == 0 || drives(character) ? "?" : std::string(character);
        text.remove_prefix(character.size());
    }
    return out;
}

std::string heading(std::string_view text) {
    static const bool colour = wants_colour();
    return colour ? "\033[1m" + std::string(text) + "\033[0m" : std::string(text);
}

}  // namespace gristwright::cli
