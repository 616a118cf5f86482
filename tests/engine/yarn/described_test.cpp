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

TEST_CASE("what is no yarn, or might be two, is asked about") {
    for (const auto* bad : {"", "cotton", "8/2", "8/2 wool", "0/2 cotton", "8/ cotton", "12 wraps"})
        CHECK_THROWS_AS(read_described_yarn(bad), std::invalid_argument);
}
