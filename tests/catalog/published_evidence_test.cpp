// Whole published pieces taken as weighed swatches: does what they tell hold for the next piece?
#include <doctest/doctest.h>

#include "tests/catalog/published.hpp"

using namespace gristwright;
using namespace published;

// K01 and K02: Handbook of Wool Knitting and Crochet, 1918 (Project Gutenberg 26113), one yarn,
// both in garter. No grist is printed, so three grists that such a gauge allows are tried: what was
// weighed on the muffler must make up for the grist that was guessed.
TEST_CASE("a garter muffler of 1918, weighed whole, tells what the garter sweater takes") {
    const auto fabrics = catalog::built_in().fabrics;
    const double printed = figure(knit_case("K01"), "amount_used_oz");
    for (const double grist : {330.0, 380.0, 430.0}) {
        const auto ounces_needed = sweater_ounces(grist, fabrics);
        MESSAGE(grist, " tex: ", ounces_needed.mid, " oz (", ounces_needed.low(), " to ",
                ounces_needed.high(), "), printed ", printed);
        CHECK(ounces_needed.low() <= printed);
        CHECK(ounces_needed.high() >= printed);
    }
}

// K70 (a spinner's page, shawl of 2018-19, 1,380 yd less 108 left) and K73 (a spinner's page,
// December 2008, about 2,000 yd): neither prints gauge or grist, so K70's use for its area stands
// in for a weighed swatch, and the range for K73 is that of another knitter's lace.
TEST_CASE("one handspun lace shawl, used up and measured, tells what another takes") {
    const auto needs = second_shawl(catalog::built_in().fabrics);
    const double printed = figure(knit_case("K73"), "amount_used_yd");
    MESSAGE("predicted ", in_yards(needs.mid), " yd (", in_yards(needs.low()), " to ",
            in_yards(needs.high()), "), published about ", printed);
    CHECK(in_yards(needs.low()) <= printed);
    CHECK(in_yards(needs.high()) >= printed);
}
