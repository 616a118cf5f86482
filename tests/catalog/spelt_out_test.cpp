// Phrases that are alike, written as one.
#include "catalog/text/spelt_out.hpp"

#include <doctest/doctest.h>

#include "catalog/reference/spoken.hpp"
#include "catalog/reference/tables.hpp"
#include "catalog/text/bad_text.hpp"
#include "engine/units/failure.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;
using Phrases = std::vector<std::string>;

TEST_CASE("braces stand for each of what they hold") {
    CHECK(spelt_out("shrink it") == Phrases{"shrink it"});
    CHECK(spelt_out("{shrink|boil} it {hard|}") ==
          Phrases{"shrink it hard", "shrink it", "boil it hard", "boil it"});
    CHECK(spelt_out("as {big|long} as {it goes}") ==
          Phrases{"as big as it goes", "as long as it goes"});
    for (const char* wrong : {"{a|b", "a|b}", "{a {b} c}", "}{", "x {"})
        CHECK_THROWS_AS(spelt_out(wrong), Refused);
}

TEST_CASE("a row of the words may hold many, and a phrase that stands in two rows is told") {
    const auto read = [](const std::string& rows) {
        SpokenWords spoken;
        return read_words("word,class,means\n" + rows, "words.csv", carried().fabrics, spoken);
    };
    CHECK(read("{full|boil} it,role,fulled\n") == "full it\trole\tfulled\nboil it\trole\tfulled\n");
    CHECK_THROWS_WITH_AS(read("{full|boil} it,role,fulled\nboil it,role,fulled\n"),
                         doctest::Contains("'boil it' stands twice"), BadText);
    CHECK_THROWS_WITH_AS(read("grumble,tone,shouts\n"), doctest::Contains("no such tone"), BadText);
    CHECK_THROWS_WITH_AS(read("{full it,role,fulled\n"), doctest::Contains("other half"), BadText);
}
