// The characters of a UTF-8 text (RFC 3629), and those of them that would not stay text.
#pragma once

#include <string>
#include <string_view>

namespace gristwright::catalog {

inline constexpr char32_t no_character = 0xFFFFFFFF;

// The first character of `text`, which is taken off it. Where none begins (a stray byte, an
// overlong form, a surrogate, beyond U+10FFFF) it is no_character, and the text is as it was.
// `text` must not be empty.
char32_t take_character(std::string_view& text);

// Escape, bell, line end and the rest of C0 and C1.
bool is_control(char32_t c);

// Marks without a form of their own that turn the direction of writing, or hide.
bool is_direction_mark(char32_t c);

// The text with '?' for every control, every mark of direction and every byte that is no character.
std::string inert(std::string_view text);

}  // namespace gristwright::catalog
