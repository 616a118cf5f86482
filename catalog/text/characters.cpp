#include "catalog/text/characters.hpp"

#include <algorithm>

namespace gristwright::catalog {
namespace {

// How many bytes the character has that begins with this one; 0 when none does.
std::size_t length_of(unsigned char first) {
    if (first < 0x80) return 1;
    if (first < 0xC2) return 0;
    if (first < 0xE0) return 2;
    if (first < 0xF0) return 3;
    return first < 0xF5 ? 4 : 0;
}

}  // namespace

char32_t take_character(std::string_view& text) {
    const auto first = static_cast<unsigned char>(text[0]);
    const auto length = length_of(first);
    if (length == 0 || length > text.size()) return no_character;
    char32_t out = length == 1 ? first : first & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        if ((next & 0xC0) != 0x80) return no_character;
        out = (out << 6) | (next & 0x3Fu);
    }
    const bool overlong = (length == 3 && out < 0x800) || (length == 4 && out < 0x10000);
    const bool surrogate = out >= 0xD800 && out <= 0xDFFF;
    if (overlong || surrogate || out > 0x10FFFF) return no_character;
    text.remove_prefix(length);
    return out;
}

bool is_control(char32_t c) { return c < 0x20 || (c >= 0x7F && c < 0xA0); }

bool is_direction_mark(char32_t c) {
    return (c >= 0x200B && c <= 0x200F) || (c >= 0x2028 && c <= 0x202E) ||
           (c >= 0x2060 && c <= 0x206F) || c == 0x061C || c == 0xFEFF;
}

std::string inert(std::string_view text) {
    const auto plain = [](char c) { return c >= ' ' && c <= '~'; };
    if (std::all_of(text.begin(), text.end(), plain)) return std::string(text);
    std::string out;
    while (!text.empty()) {
        auto rest = text;
        const auto c = take_character(rest);
        const bool none = c == no_character;
        const auto bytes = none ? 1 : text.size() - rest.size();
        out += none || is_control(c) || is_direction_mark(c) ? "?" : text.substr(0, bytes);
        text.remove_prefix(bytes);
    }
    return out;
}

}  // namespace gristwright::catalog
