// What a blend is made of, however its shares are told.
#include "catalog/typed/blend_parts.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <string>

#include "catalog/reference/catalogue.hpp"

using namespace gristwright::catalog;

namespace {

BlendPieces pieces(const std::string& text) {
    static const auto catalogue = built_in();
    return blend_pieces(text, catalogue.spoken);
}

// "merino 75; silk 25"; "?" behind a name without a share.
std::string told(const std::string& text) {
    const auto read = pieces(text);
    if (read.unread) return "unread";
    std::string out;
    for (const auto& piece : read.pieces) {
        const auto share = piece.share ? fmt::format("{:.4g}", *piece.share) : std::string("?");
        out += fmt::format("{}{} {}", out.empty() ? "" : "; ", piece.name, share);
    }
    return out;
}

}  // namespace

TEST_CASE("blends: two shares are the same in whatever order they are told") {
    for (int share = 5; share < 100; share += 5) {
        const int rest = 100 - share;
        const auto expected = fmt::format("merino {}; silk {}", share, rest);
        for (const char* form :
             {"{0}% merino {1}% silk", "merino {0}%, silk {1}%", "merino {0} silk {1}",
              "{0}% merino and {1}% silk", "merino/silk {0}/{1}", "{0}/{1} merino/silk",
              "{0} merino + {1} silk", "merino ({0}%) silk ({1}%)", "Merino: {0}, Silk: {1}",
              "{0}g merino & {1}g silk", "{0} parts merino to {1} parts silk",
              "{0}% merino, rest silk", "{0}% merino, the remainder silk",
              "merino {0} percent with {1} percent silk", "merino, silk {1}%"}) {
            const auto text = fmt::format(fmt::runtime(form), share, rest);
            CAPTURE(text);
            CHECK(told(text) == expected);
        }
    }
}

TEST_CASE("blends: shares in words") {
    CHECK(told("half merino half silk") == "merino 50; silk 50");
    CHECK(told("half merino, half silk") == "merino 50; silk 50");
    CHECK(told("two thirds romney, one third kid mohair") == "romney 66.67; kid mohair 33.33");
    CHECK(told("three quarters merino and a quarter silk") == "merino 75; silk 25");
    CHECK(told("1/4 angora, rest targhee") == "angora 25; targhee 75");
    CHECK(told("1/3 silk 2/3 merino") == "silk 33.33; merino 66.67");
    CHECK(told("3 parts gotland to 1 part mohair") == "gotland 75; mohair 25");
    CHECK(told("one part silk to three parts merino") == "silk 25; merino 75");
    CHECK(told("2:1 merino silk") == "unread");  // "merino silk" may be one name: parted by names
    CHECK(told("equal parts merino, silk and yak") == "merino 33.33; silk 33.33; yak 33.33");
    CHECK(told("a pound of cvm and 4 oz of yak") == "cvm 80; yak 20");
}

TEST_CASE("blends: one share for two is the one's beside which it stands, and the other the rest") {
    CHECK(told("Merino, with 10% silk") == "merino 90; silk 10");
    CHECK(told("falkland w/ 12% firestar") == "falkland 88; firestar 12");
    CHECK(told("70% merino, silk") == "merino 70; silk 30");
    CHECK(pieces("70% merino, silk").by_rest);
    CHECK_FALSE(pieces("70% merino, 30% silk").by_rest);
    CHECK(told("merino 70 silk") == "unread");  // before it or behind it
}

TEST_CASE("blends: what says no share is not given one") {
    CHECK(told("merino and silk") == "merino ?; silk ?");
    CHECK(told("mostly corriedale w/ a bit of tussah") == "corriedale ?; tussah ?");
    CHECK(told("mostly merino") == "unread");
    CHECK(told("merino silk 80 20 5") == "unread");
    CHECK(told("50% merino 4 oz silk") == "unread");
    CHECK(told("") == "");
}

TEST_CASE("blends: a fineness is no share") {
    const auto read = pieces("merino 19.5 micron");
    REQUIRE(read.pieces.size() == 1);
    CHECK(read.pieces[0].name == "merino");
    CHECK(read.pieces[0].micron == doctest::Approx(19.5));
    CHECK_FALSE(read.pieces[0].share);
}
