// What the reviewed trait table makes of ordinary yarns: the directions that spinners agree on.
// The figures behind each check are common practice, no source, unless one is named.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/catalogue.hpp"
#include "engine/yarn/softness.hpp"

using namespace gristwright;

namespace {

const catalog::Catalogue& built_in() {
    static const auto tables = catalog::built_in();
    return tables;
}

struct MadeOf {
    double micron_low = 25, micron_high = 30;
    Preparation preparation = Preparation::combed;
    Draw draw = Draw::short_draw;
    int plies = 2;
};

YarnProfile made(const MadeOf& how) {
    Batch batch;
    batch.skeins = {{"one", metres(400), grams(90), LengthState::washed}};
    batch.preparation = how.preparation;
    batch.draw = how.draw;
    batch.plies = how.plies;
    FibrePart wool;
    wool.kind = "sheep";
    wool.micron_low = microns(how.micron_low), wool.micron_high = microns(how.micron_high);
    batch.fibre = {wool};
    return profile(batch, built_in().yarn);
}

double has(const YarnProfile& yarn, TraitName name) { return yarn.trait(name).value; }

}  // namespace

TEST_CASE("25-30 micron wool is medium fine: between fine and coarse, and wears better than 19") {
    const auto medium = made({});
    const auto fine = made({18, 20}), coarse = made({35, 39});
    CHECK(has(medium, TraitName::softness) < has(fine, TraitName::softness));
    CHECK(has(medium, TraitName::softness) > has(coarse, TraitName::softness));
    CHECK(has(medium, TraitName::softness) > 0.4);  // next to the skin is possible
    CHECK(has(medium, TraitName::wear) > has(fine, TraitName::wear));
    CHECK(has(coarse, TraitName::wear) > has(medium, TraitName::wear));
    CHECK(medium.grade.find("3/8 blood") != std::string::npos);  // USDA: the medium grades
    CHECK(fine.share_over_prickle < prickle_felt_above);
    CHECK(medium.share_over_prickle > fine.share_over_prickle);
    CHECK(medium.share_over_prickle < coarse.share_over_prickle);
}

TEST_CASE("combing takes out the short bits and so the bloom; carding raises it") {
    for (const auto draw : {Draw::unknown, Draw::short_draw, Draw::long_draw}) {
        const auto combed = made({.preparation = Preparation::combed, .draw = draw});
        const auto carded = made({.preparation = Preparation::carded, .draw = draw});
        const auto unsaid = made({.preparation = Preparation::unknown, .draw = draw});
        CHECK(has(combed, TraitName::bloom) < has(unsaid, TraitName::bloom));
        CHECK(has(carded, TraitName::bloom) > has(unsaid, TraitName::bloom));
        CHECK(has(carded, TraitName::definition) < has(combed, TraitName::definition));
        CHECK(has(carded, TraitName::warmth) > has(combed, TraitName::warmth));
    }
}

TEST_CASE("a ply more: wears better, reads more clearly, stands better as warp") {
    const auto singles = made({.plies = 1}), two = made({.plies = 2}), three = made({.plies = 3});
    for (const auto name : {TraitName::wear, TraitName::definition})
        CHECK((has(singles, name) < has(two, name) && has(two, name) < has(three, name)));
    CHECK(has(singles, TraitName::warp_fitness) < has(two, TraitName::warp_fitness));
}

TEST_CASE("every trait has a row that always counts, and no table row points at nothing") {
    for (std::size_t t = 0; t < trait_count; ++t) {
        const auto& rows = built_in().yarn.traits;
        CHECK(std::count_if(rows.begin(), rows.end(), [&](const TraitRow& r) {
                  return r.trait == static_cast<TraitName>(t) && r.driver == Driver::base;
              }) == 1);
    }
    for (const auto& row : built_in().yarn.traits) {
        CHECK(row.from != row.to);
        CHECK(row.adds != 0);
    }
}
