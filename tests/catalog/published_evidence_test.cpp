// Whole published pieces taken as weighed swatches: does what they tell hold for the next piece?
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "catalog/catalogue.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/evidence/swatch.hpp"
#include "tests/cases.hpp"

using namespace gristwright;

namespace {

CaseRow case_of(const std::string& id) {
    for (const auto& row : read_cases("knit_cases_open.csv"))
        if (row.at("id") == id) return row;
    FAIL("no case ", id);
    return {};
}

double figure(const CaseRow& row, const char* column) { return std::stod(row.at(column)); }

Length side(const CaseRow& row, const char* column) { return inches(figure(row, column)); }

Area area_of(const CaseRow& row) { return side(row, "width_in") * side(row, "length_in"); }

YarnProfile yarn_of(double grist) {
    YarnProfile yarn;
    yarn.linear_density = {tex(grist), 0.02};
    for (auto& trait : yarn.traits) trait.spread = 0.1;
    return yarn;
}

// Laid aside whole: counted over its width, weighed with its sides.
KnittedSwatch whole_piece(const CaseRow& row) {
    KnittedSwatch out;
    out.stitches = {figure(row, "stitches"), side(row, "width_in")};
    out.width = side(row, "width_in");
    out.length = side(row, "length_in");
    out.mass = ounces(figure(row, "amount_used_oz"));
    return out;
}

}  // namespace

// K01 and K02: Handbook of Wool Knitting and Crochet, 1918 (Project Gutenberg 26113), one yarn,
// both in garter. No grist is printed, so three grists that such a gauge allows are tried: what was
// weighed on the muffler must make up for the grist that was guessed.
TEST_CASE("a garter muffler of 1918, weighed whole, tells what the garter sweater takes") {
    const auto fabrics = catalog::built_in().fabrics;
    const auto* garter = fabrics.knitted_named("garter");
    REQUIRE(garter);
    const auto muffler = case_of("K02"), sweater = case_of("K01");
    for (const double grist : {330.0, 380.0, 430.0}) {
        const auto yarn = yarn_of(grist);
        auto known = yarn.evidence;
        observe(whole_piece(muffler), *garter, yarn, known);
        REQUIRE(known.metres);
        // The sweater is knitted tighter, on the same needles: its own printed gauge.
        const auto printed = stitches_per_inch(figure(sweater, "gauge_st_per_in"));
        known.gauge = Estimate<Gauge>{printed / garter->stitches, 0.02};
        const auto cloth = knit_cloth(informed(yarn, known), *garter, Firmness::ordinary, {});
        const auto needs = cloth.metres_per_area.mid * area_of(sweater) * yarn.linear_density.mid;
        const Estimate<double> ounces_needed{in_ounces(needs), cloth.metres_per_area.spread};
        MESSAGE(grist, " tex: ", ounces_needed.mid, " oz (", ounces_needed.low(), " to ",
                ounces_needed.high(), "), printed ", sweater.at("amount_used_oz"));
        CHECK(ounces_needed.low() <= figure(sweater, "amount_used_oz"));
        CHECK(ounces_needed.high() >= figure(sweater, "amount_used_oz"));
    }
}

// K70 (a spinner's page, shawl of 2018-19, 1,380 yd less 108 left) and K73 (a spinner's page,
// December 2008, about 2,000 yd): neither prints gauge or grist, so K70's use for its area stands
// in for a weighed swatch, and the range for K73 is that of another knitter's lace.
TEST_CASE("one handspun lace shawl, used up and measured, tells what another takes") {
    const auto fabrics = catalog::built_in().fabrics;
    const auto* lace = fabrics.knitted_named("eyelet lace");
    REQUIRE(lace);
    const auto first = case_of("K70"), second = case_of("K73");
    const auto cloth = knit_cloth(yarn_of(60), *lace, Firmness::lace, {});
    const double per_area = yards(figure(first, "amount_used_yd")).si() / area_of(first).si();
    const auto known =
        posterior(Estimate<double>{1, cloth.metres_per_area.spread},
                  {per_area / cloth.metres_per_area.mid.si(), constants::swatch_and_rest});
    const Estimate<Length> needs{cloth.metres_per_area.mid * area_of(second) * known.mid,
                                 together(known.spread, cloth.metres_per_area.spread)};
    MESSAGE("predicted ", in_yards(needs.mid), " yd (", in_yards(needs.low()), " to ",
            in_yards(needs.high()), "), published about ", second.at("amount_used_yd"));
    CHECK(in_yards(needs.low()) <= figure(second, "amount_used_yd"));
    CHECK(in_yards(needs.high()) >= figure(second, "amount_used_yd"));
}
