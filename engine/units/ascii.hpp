// The letters and digits of English text, the same in every locale; any other byte is none of them.
#pragma once

#include <string>
#include <string_view>

namespace gristwright::ascii {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
constexpr char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }
constexpr bool is_letter(char c) { return lower(c) >= 'a' && lower(c) <= 'z'; }

inline std::string lowered(std::string_view text) {
    std::string out(text);
    for (auto& c : out) c = lower(c);
    return out;
}

// "Yarn needed?" is "yarnneeded": how a heading or a short answer is compared.
inline std::string lowered_letters(std::string_view text) {
    std::string out;
    for (const char c : text)
        if (is_letter(c)) out += lower(c);
    return out;
}

}  // namespace gristwright::ascii
