// What the reviewed trait table makes of ordinary yarns: the directions that spinners agree on.
// The figures behind each check are common practice, no source, unless one is named.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/catalogue.hpp"
#include "engine/suitability/judgement.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/softness.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

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
    return profile(batch, catalog::carried().yarn);
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
    CHECK(fine.share_over_prickle < constants::felt_share);
    CHECK(medium.share_over_prickle > fine.share_over_prickle);
    CHECK(medium.share_over_prickle < coarse.share_over_prickle);
}

TEST_CASE("combing takes out the short bits and so the bloom, carding raises it") {
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

TEST_CASE("every trait has its rows, and no row points at nothing") {
    const auto& rows = catalog::carried().yarn.traits;
    for (std::size_t t = 0; t < trait_count; ++t)
        CHECK(std::any_of(rows.begin(), rows.end(),
                          [&](const TraitRow& r) { return r.trait == static_cast<TraitName>(t); }));
    for (const auto& row : rows) {
        CHECK(row.from != row.to);
        CHECK(row.adds != 0);
    }
}

namespace {

YarnProfile spun(const char* fibre, Preparation preparation, Draw draw, int plies,
                 double per_gram) {
    Batch batch;
    batch.skeins = {{"one", metres(2000), grams(2000 / per_gram), LengthState::washed}};
    batch.preparation = preparation, batch.draw = draw, batch.plies = plies;
    batch.fibre = {*catalog::carried().fibre_named(fibre)};
    return profile(batch, catalog::carried().yarn);
}

Judgement judged(const char* article, const YarnProfile& yarn) {
    const auto& tables = catalog::carried();
    return judge(plan(*tables.template_named(article), yarn, tables.fabrics, {}, {}), yarn);
}

}  // namespace

// Of each published (docs/suitability.md names the sources); the figures are ours.
TEST_CASE("needs that nothing buys back: felt, socks, towels, skin, hot pots") {
    const auto woollen = [](const char* fibre) {
        return spun(fibre, Preparation::carded, Draw::long_draw, 2, 2.2);
    };
    const auto sock = [](const char* fibre, int plies) {
        return spun(fibre, Preparation::combed, Draw::short_draw, plies, 4.3);
    };
    CHECK(judged("fulled-bag-panel", woollen("Cotton (general)")).score < 35);
    CHECK(judged("fulled-bag-panel", woollen("Nylon staple")).score < 35);
    CHECK(judged("fulled-scarf", woollen("Merino")).score >= 80);
    CHECK(judged("plain-socks", sock("Merino", 1)).score < 35);
    CHECK(judged("plain-socks", sock("Angora rabbit", 1)).score < 35);
    CHECK(judged("plain-socks", sock("Romney", 3)).score >
          judged("plain-socks", sock("Merino", 3)).score);
    CHECK(judged("plain-socks", sock("Corriedale", 4)).score >= 80);
    CHECK(judged("hand-towel", sock("Corriedale", 2)).score < 60);
    CHECK(judged("hand-towel", sock("Cotton (general)", 2)).score >= 80);
    CHECK(judged("garter-scarf", woollen("Navajo-Churro - outer coat")).score < 35);
    CHECK(judged("watch-cap", woollen("Alpaca")).score <
          judged("watch-cap", woollen("Corriedale")).score);
    CHECK(judged("one-mug-mat", woollen("Nylon staple")).score < 60);
}

TEST_CASE("how a yarn is built tells: boucle hides cables and catches as warp, cabled shows them") {
    const auto trait = [](std::optional<Made> how, TraitName name) {
        Batch batch;
        batch.skeins = {{"one", metres(400), grams(180), LengthState::washed}};
        batch.plies = 3;
        if (how) batch.made[static_cast<std::size_t>(*how)] = true;
        return profile(batch, catalog::carried().yarn).trait(name).value;
    };
    for (const auto blurred : {Made::boucle, Made::core_spun, Made::thick_and_thin}) {
        CHECK(trait(blurred, TraitName::definition) < trait({}, TraitName::definition));
        CHECK(trait(blurred, TraitName::wear) < trait({}, TraitName::wear));
        CHECK(trait(blurred, TraitName::warp_fitness) < trait({}, TraitName::warp_fitness));
    }
    CHECK(trait(Made::cabled, TraitName::definition) > trait({}, TraitName::definition));
    CHECK(trait(Made::energised, TraitName::warp_fitness) < trait({}, TraitName::warp_fitness));
    CHECK(trait(Made::fulled, TraitName::wear) > trait({}, TraitName::wear));
}
