// Numbers in words, written as figures before an amount is read.
#include "catalog/typed/number_words.hpp"
#include "tests/catalog/carried.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <string>
#include <utility>

using namespace gristwright::catalog;

namespace {

constexpr const char* ones[] = {"",        "one",     "two",       "three",    "four",
                                "five",    "six",     "seven",     "eight",    "nine",
                                "ten",     "eleven",  "twelve",    "thirteen", "fourteen",
                                "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
constexpr const char* tens[] = {"",      "",      "twenty",  "thirty", "forty",
                                "fifty", "sixty", "seventy", "eighty", "ninety"};

// As people write it: "one hundred and eighty-four".
std::string in_words(int n, const char* join) {
    if (n < 20) return ones[n];
    if (n < 100) return std::string(tens[n / 10]) + (n % 10 ? join : "") + ones[n % 10];
    const auto rest = in_words(n % 100, join);
    return fmt::format("{} hundred{}{}", ones[n / 100], rest.empty() ? "" : " and ", rest);
}

}  // namespace

TEST_CASE("number words: every number below a thousand comes out as its figure") {
    for (int n = 1; n < 1000; ++n)
        for (const char* join : {" ", "-"}) {
            const auto words = in_words(n, join);
            CAPTURE(words);
            CHECK(in_figures(words + " yards", carried().spoken) == fmt::format("{} yards", n));
        }
}

TEST_CASE("number words: parts and dozens, of a unit or of things") {
    constexpr std::pair<const char*, const char*> cases[] = {
        {"half a pound", "0.5 pound"},
        {"a pound and a half", "1.5 pound"},
        {"two and a half ounces", "2.5 ounces"},
        {"an ounce", "1 ounce"},
        {"three quarters of a pound", "0.75 pound"},
        {"a couple hundred yards", "200 yards"},
        {"a dozen 10 yd bits", "12 x 10 yd bits"},
        {"two 50g balls", "2 x 50g balls"},
        {"about a thousand metres", "about 1000 metres"},
        {"Half A Pound", "0.5 pound"},
    };
    for (const auto& [words, figures] : cases) {
        CAPTURE(words);
        CHECK(in_figures(words, carried().spoken) == figures);
    }
}

TEST_CASE("number words: a text without them stays as it is") {
    for (const char* text : {"440yd", "3 x 50g", "1 1/2 lb", "S. likes it", "Onerous", "stone",
                             "a hat", "22\" head", "weighty", "none", ""}) {
        CAPTURE(text);
        CHECK(in_figures(text, carried().spoken) == text);
    }
}

TEST_CASE("number words: a pair counts things, and is no amount") {
    CHECK(in_figures("a pair of skeins", carried().spoken) == "a pair of skeins");
    CHECK(in_figures("set of four", carried().spoken) == "set of 4");
}
