// UTF-8 by RFC 3629, sections 3 and 4: which bytes are a character, and which characters drive.
#include "catalog/text/characters.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace gristwright::catalog;

namespace {

char32_t first(std::string_view text) { return take_character(text); }

}  // namespace

TEST_CASE("a character is taken off whole, and what is none is left") {
    const std::pair<std::string_view, char32_t> cases[] = {
        {"a", U'a'},
        {"\xC3\xA9", 0xE9},
        {"\xE7\xBE\x8A", 0x7F8A},
        {"\xC2\x9B", 0x9B},
        {"\xF0\x9F\xA7\xB6", 0x1F9F6},
        {"\xF4\x8F\xBF\xBF", 0x10FFFF},
        {"\x80", no_character},  // a byte that only follows
        {"\xC3", no_character},  // cut short
        {"\xC0\xAF", no_character},
        {"\xE0\x80\xAF", no_character},       // overlong
        {"\xED\xA0\x80", no_character},       // a surrogate
        {"\xF4\x90\x80\x80", no_character}};  // beyond the last
    for (const auto& [bytes, wanted] : cases) {
        auto text = bytes;
        CHECK(take_character(text) == wanted);
        CHECK(text.size() == (wanted == no_character ? bytes.size() : 0));
    }
}

TEST_CASE("controls and marks of direction are told from what is read") {
    for (const char* drives : {"\x1b", "\a", "\n", "\x7f", "\xC2\x9B"})
        CHECK(is_control(first(drives)));
    for (const char* turns :
         {"\xE2\x80\xAE", "\xE2\x81\xA6", "\xD8\x9C", "\xEF\xBB\xBF", "\xE2\x80\xA8"})
        CHECK(is_direction_mark(first(turns)));
    for (const char* plain : {"a", " ", "\xC2\xA0", "\xE2\x80\x93", "\xE2\x80\x99", "\xD7\x90"}) {
        CHECK_FALSE(is_control(first(plain)));
        CHECK_FALSE(is_direction_mark(first(plain)));
    }
}
