#include "cli/output/layout.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/cli/asked.hpp"
#include "tests/cli/odd_texts.hpp"

using namespace gristwright::cli;
using asked::lines;
using odd::words_of;

namespace {

// How many words at the beginning of these stay together: a number keeps a short unit.
std::size_t kept_together(const std::vector<std::string>& words, std::size_t at) {
    const char last = words[at].back();
    const bool number = last >= '0' && last <= '9';
    if (!number || at + 1 == words.size()) return 1;
    const auto& unit = words[at + 1];
    return unit.size() <= 4 && unit.find_first_of("0123456789") == std::string::npos ? 2 : 1;
}

std::size_t width_of(const std::vector<std::string>& words, std::size_t at) {
    return characters(words[at]) +
           (kept_together(words, at) == 2 ? 1 + characters(words[at + 1]) : 0);
}

std::string indented(const std::string& line, std::size_t indent) {
    return line.substr(0, std::min(indent, line.find_first_not_of(' ')));
}

}  // namespace

TEST_CASE("wrapping loses no word, and every line stands after its indent") {
    std::mt19937 random{1};
    for (std::size_t indent = 0; indent <= 70; ++indent) {
        const auto text = odd::prose(random, 60);
        const auto out = wrapped(text, indent);
        INFO(text);
        CHECK(words_of(out) == words_of(text));
        for (const auto& line : lines(out)) {
            CHECK(indented(line, indent).size() == indent);
            CHECK(line[indent] != ' ');
            CHECK(line.back() != ' ');
        }
    }
}

TEST_CASE("a line is full: too long only for one word, too short for the next one") {
    std::mt19937 random{2};
    for (std::size_t indent = 0; indent <= 70; indent += 3) {
        const auto words = words_of(odd::prose(random, 90));
        const auto out = lines(wrapped(joined(words, " "), indent));
        std::size_t at = 0;
        for (const auto& line : out) {
            INFO(line);
            if (characters(line) > text_width()) CHECK(indent + width_of(words, at) > text_width());
            const auto after = at + words_of(line).size();
            if (after < words.size())
                CHECK(characters(line) + 1 + width_of(words, after) > text_width());
            at = after;
        }
        CHECK(at == words.size());
    }
}

TEST_CASE("a number is never parted from its unit") {
    for (std::size_t before = 60; before < 80; ++before)
        for (const char* kept : {"38.5 g", "12 %", "10 cm,", "2 m."}) {
            const auto out = wrapped(std::string(before, 'x') + " " + kept + " more", 0);
            INFO(out);
            CHECK(asked::holds(out, kept));
        }
}

TEST_CASE("what hangs on a label stands under its first line") {
    std::mt19937 random{3};
    for (const char* label : {"for:", "Höhe:", "In the way:", "a"})
        for (std::size_t indent = 0; indent < 20; ++indent) {
            const auto text = joined(words_of(odd::prose(random, 40)), " ");
            const auto out = lines(labelled(label, text, indent));
            const auto head = std::string(indent, ' ') + label + " ";
            CHECK(out[0].substr(0, head.size()) == head);
            for (std::size_t i = 1; i < out.size(); ++i)
                CHECK(out[i].find_first_not_of(' ') == indent + characters(label) + 1);
            CHECK(words_of(joined(out, " ").substr(head.size())) == words_of(text));
        }
    CHECK(labelled("Sizes:  ", "", 2) == "  Sizes:");
    CHECK(labelled("", "", 0).empty());
}

TEST_CASE("texts fit together by their characters, not their bytes") {
    CHECK(fit_together("3 cm", " wide", 9));
    CHECK_FALSE(fit_together("3 cm", " wide", 8));
    CHECK(fit_together("3½ cm", " à peu près", 16));
    CHECK_FALSE(fit_together("3½ cm", " à peu près", 15));
}

TEST_CASE("columns are as wide as asked, counted in characters") {
    std::mt19937 random{4};
    for (std::size_t width = 20; width <= 200; ++width) {
        const auto text = odd::prose(random, 1 + static_cast<int>(width) / 20);
        const auto out = padded(text, width);
        CHECK(characters(out) == std::max(width, characters(text)));
        CHECK(out.substr(0, text.size()) == text);
        CHECK(out.find_first_not_of(' ', text.size()) == std::string::npos);
    }
}

TEST_CASE("lists and capitals, with nothing and with letters that are not English") {
    const std::pair<std::vector<std::string>, const char*> lists[] = {
        {{}, ""}, {{"a"}, "a"}, {{"a", "b"}, "a, b"}, {{"a", "b", "c d"}, "a, b, c d"}};
    for (const auto& [parts, said] : lists) CHECK(joined(parts) == said);
    const std::pair<const char*, const char*> capitals[] = {{"", ""},         {"yarn", "Yarn"},
                                                            {"Yarn", "Yarn"}, {"é", "é"},
                                                            {"2 m", "2 m"},   {"zebra", "Zebra"}};
    for (const auto& [text, said] : capitals) CHECK(capital(text) == said);
}

TEST_CASE("what comes out of inert is UTF-8 that neither drives nor turns, and stays as it is") {
    std::mt19937 random{5};
    for (int i = 0; i < 400; ++i) {
        const auto text = odd::anything(random, 12);
        const auto out = inert(text);
        CHECK(odd::is_utf8(out));
        CHECK_FALSE(odd::turns_writing(out));
        CHECK(std::none_of(out.begin(), out.end(),
                           [](char c) { return (c >= 0 && c < 0x20) || c == 0x7F; }));
        CHECK(inert(out) == out);
        const auto harmless = odd::prose(random, 12);
        CHECK(inert(harmless) == harmless);
    }
}

TEST_CASE("inert takes every byte sequence for UTF-8 that RFC 3629 does, and no other") {
    // Found a bug: overlong forms, surrogates and what lies beyond U+10FFFF passed, and the writer
    // of JSON gave up on them.
    for (int lead = 0xC0; lead <= 0xFF; ++lead)
        for (int second = 0x70; second <= 0xC8; ++second) {
            const auto start = std::string{static_cast<char>(lead), static_cast<char>(second)};
            for (const char* rest : {"", "\x80", "\xBF", "\x80\x80", "\xBF\xBF"}) {
                const auto text = start + rest;
                INFO(lead, " ", second, " ", text.size());
                CHECK(odd::is_utf8(inert(text)));
                if (odd::is_utf8(text)) CHECK(characters(inert(text)) == characters(text));
            }
        }
}

TEST_CASE("no mark that turns the direction of writing comes out") {
    // Found a bug: the Arabic letter mark, U+061C, passed.
    for (const char* mark : {"\xD8\x9C", "\xE2\x80\x8E", "\xE2\x80\xAE", "\xE2\x81\xA9"})
        CHECK(inert(std::string("a") + mark + "b") == "a?b");
    CHECK(inert("\xD8\x9B") == "\xD8\x9B");  // the Arabic semicolon beside it
}

TEST_CASE("where no colour is wanted a heading is plain") { CHECK(heading("Skeins") == "Skeins"); }
