#include "engine/yarn/described.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

#include "tests/near.hpp"

using namespace gristwright;

// Hanks from GNU units 2.22: cotton 840 yd, worsted 560 yd, linen lea 300 yd to the pound; Nm
// km/kg.
TEST_CASE("a yarn by its count, as it is sold") {
    CHECK(in_tex(read_described_yarn("8/2 cotton")) == near(2 * 590.54 / 8, 1e-4));
    CHECK(in_tex(read_described_yarn("1800 ypp")) ==
          near(496055.0 / 1800, 1e-4));  // tex = 496055/ypp
    CHECK(in_tex(read_described_yarn("2/8 Cotton")) == near(2 * 590.54 / 8, 1e-4));
    CHECK(in_tex(read_described_yarn("16/2 linen")) == near(2 * 1653.5 / 16, 1e-4));
    CHECK(in_tex(read_described_yarn("2/20 Nm wool")) == near(100, 1e-6));
    CHECK(in_tex(read_described_yarn("12/2 worsted")) == near(2 * 885.81 / 12, 1e-4));
    CHECK(in_tex(read_described_yarn("300 tex")) == near(300, 1e-9));
    CHECK(in_tex(read_described_yarn("400m/100g")) == near(250, 1e-9));
    CHECK(in_tex(read_described_yarn("3360yd/lb")) == near(147.6, 1e-3));
}

// Nm and tex by ISO 1144; R is the resultant of folded yarns (ISO 1139, from memory).
TEST_CASE("a yarn by its count, with its system in front") {
    const auto metres_per_gram = [](const char* text) {
        return 1000 / in_tex(read_described_yarn(text));
    };
    CHECK(metres_per_gram("Nm 6/1") == near(6, 1e-6));
    CHECK(metres_per_gram("Nm 28/2 merino lace") == near(14, 1e-6));
    CHECK(metres_per_gram("Nm 14") == near(14, 1e-6));
    CHECK(metres_per_gram("Ne 30/2") == near(25.4, 1e-3));
    CHECK(metres_per_gram("R 50 tex/2") == near(20, 1e-6));
    CHECK(metres_per_gram("50 tex x 2") == near(10, 1e-6));
    CHECK(metres_per_gram("2/12s worsted") == near(6.773, 1e-3));
    CHECK(metres_per_gram("300 den") == near(30, 1e-6));
    CHECK(begins_as_a_count("Nm 6/1"));
    CHECK(begins_as_a_count("300 tex"));
    CHECK_FALSE(begins_as_a_count("linen 250g"));
    CHECK_FALSE(begins_as_a_count("300 g"));
}

TEST_CASE("a count that two systems share is asked") {
    for (const auto* text : {"2/12s", "8/2 wool", "30/2 silk", "50 tex/2"})
        CHECK_THROWS_WITH_AS(read_described_yarn(text), doctest::Contains("which?"),
                             std::invalid_argument);
}

TEST_CASE("what is no yarn, or might be two, is asked about") {
    for (const auto* bad : {"", "cotton", "8/2", "8/2 wool", "0/2 cotton", "8/ cotton", "12 wraps",
                            "R 50/2", "50 tex blue", "Nm 6/"})
        CHECK_THROWS_AS(read_described_yarn(bad), std::invalid_argument);
}
