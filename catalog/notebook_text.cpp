#include "catalog/notebook_text.hpp"

#include <fmt/core.h>

#include "catalog/notebook.hpp"

namespace gristwright::catalog {
namespace {

constexpr char32_t bad = 0xFFFFFFFF;

// How many bytes the character has that begins with this one; 0 when none does.
std::size_t length_of(unsigned char first) {
    if (first < 0x80) return 1;
    if (first < 0xC2) return 0;
    if (first < 0xE0) return 2;
    if (first < 0xF0) return 3;
    return first < 0xF5 ? 4 : 0;
}

// The first character of `text`, which is taken off it.
char32_t take_character(std::string_view& text) {
    const auto first = static_cast<unsigned char>(text[0]);
    const auto length = length_of(first);
    if (length == 0 || length > text.size()) return bad;
    char32_t out = length == 1 ? first : first & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        if ((next & 0xC0) != 0x80) return bad;
        out = (out << 6) | (next & 0x3Fu);
    }
    text.remove_prefix(length);
    const bool overlong = (length == 3 && out < 0x800) || (length == 4 && out < 0x10000);
    return overlong || out > 0x10FFFF || (out >= 0xD800 && out <= 0xDFFF) ? bad : out;
}

bool is_control(char32_t c) { return c < 0x20 || (c >= 0x7F && c < 0xA0); }

void refuse_name(std::string_view name, std::string_view why) {
    throw NotebookRefused(fmt::format("a batch cannot be called '{}': {}", name, why));
}

}  // namespace

bool is_plain_text(std::string_view text) {
    while (!text.empty()) {
        const auto c = take_character(text);
        if (c == bad || is_control(c)) return false;
    }
    return true;
}

void check_kept_text(std::string_view text) {
    if (text.size() > longest_kept_text)
        throw NotebookRefused(fmt::format("a text of {} bytes is too long to keep: at most {}",
                                          text.size(), longest_kept_text));
    if (!is_plain_text(text))
        throw NotebookRefused(
            fmt::format("'{}' cannot be kept: it has control characters or is not UTF-8", text));
}

void check_batch_name(std::string_view name) {
    check_kept_text(name);
    if (name.empty()) refuse_name(name, "a name has at least one letter");
    if (name.size() > longest_batch_name)
        refuse_name(name, fmt::format("a name has at most {} bytes", longest_batch_name));
    if (name.front() == '-') refuse_name(name, "it would be taken for an option");
    if (name.front() == ' ' || name.back() == ' ')
        refuse_name(name, "a name neither begins nor ends with a space");
    if (name.find('/') != name.npos || name.ends_with(".toml") || name.ends_with(".csv"))
        refuse_name(name, "it would be taken for a file");
}

}  // namespace gristwright::catalog
