// The words for and against, of what the engine finds worth saying.
#include "cli/output/reason_words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "tests/engine/told.hpp"

using namespace gristwright;
using namespace gristwright::cli;

namespace {

struct Told : invented::Told {
    using invented::Told::Told;

    std::vector<std::string> against() const { return said_against(judged, plan, yarn); }
    std::vector<std::string> in_favour() const { return said_in_favour(judged, yarn); }
};

using Words = std::vector<std::string>;

bool said_among(const Words& words, const std::string& said) {
    return std::find(words.begin(), words.end(), said) != words.end();
}

}  // namespace

TEST_CASE(
    "a sentence says what the yarn had, what was wanted, and its two "
    "strongest reasons") {
    const Told t(0.35, 0.9);
    CHECK(sentence(FactorName::softness, t.judged, t.plan, t.yarn) ==
          "softness 0.35, at least 0.70 wanted: thick fibre, much twist");
    CHECK(sentence(FactorName::warmth, t.judged, t.plan, t.yarn) ==
          "warmth 0.90, at least 0.70 wanted");
    CHECK(sentence(FactorName::equipment, t.judged, t.plan, t.yarn) ==
          "equipment: nothing stands in the way");
    CHECK(sentence(FactorName::cover, t.judged, t.plan, t.yarn) ==
          "cover: tightness 1.05, 0.93 to 1.12 wanted");
}

TEST_CASE("what speaks for a trait is no reason against it") {
    // It listed 'warm fibre' under what counts against a mitten.
    Told t(0.35, 0.4);
    t.of(TraitName::warmth).reasons = {"warm fibre", "dense yarn holds less air"};
    CHECK(
        sentence(FactorName::warmth, t.judged, t.plan, t.yarn) ==
        "warmth 0.40, at least 0.70 wanted; in its favour: warm fibre, dense yarn holds less air");
    t.of(TraitName::warmth).lowering = {"dense yarn holds less air"};
    CHECK(sentence(FactorName::warmth, t.judged, t.plan, t.yarn) ==
          "warmth 0.40, at least 0.70 wanted: dense yarn holds less air");
    const Told enough(0.9, 0.9);
    CHECK(sentence(FactorName::softness, enough.judged, enough.plan, enough.yarn) ==
          "softness 0.90, at least 0.70 wanted: thick fibre, much twist");
}

TEST_CASE("what counts against comes dearest first, what speaks for heaviest first") {
    CHECK(Told(0.35, 0.5).against() == Words{"may prickle", "not so warm"});
    CHECK(Told(0.68, 0.1).against() == Words{"not so warm"});  // 0.02 is not worth saying
    CHECK(Told(0.9, 0.9).against().empty());
    CHECK(Told(0.9, 0.9).in_favour() == Words{"soft enough", "warm"});
    CHECK(Told(0.9, 0.1).in_favour() == Words{"soft enough"});
}

TEST_CASE("nothing is both for and against") {
    for (const double softness : {0.0, 0.3, 0.66, 0.7, 1.0})
        for (const double warmth : {0.0, 0.3, 0.66, 0.7, 1.0}) {
            const Told t(softness, warmth);
            CHECK(t.against().size() + t.in_favour().size() <= 2);
        }
}

TEST_CASE("skeins that differ never speak for an article, however little it asks") {
    Told t(0.9, 0.9);
    t.wish(Asked::consistency) = {0.4, 0.5};
    t.yarn.consistency = 0.5;
    t.judged = judge(t.plan, t.yarn);
    CHECK(t.in_favour() == Words{"soft enough", "warm"});  // one skein matches nothing
    t.yarn.skeins.resize(2);
    CHECK(t.in_favour() == Words{"soft enough", "warm", "skeins match"});
    t.yarn.agreement.answer = SameYarn::differ;
    CHECK(t.in_favour() == Words{"soft enough", "warm"});
    CHECK(t.against() == Words{"the skeins are several yarns"});
}

TEST_CASE("a remedy is offered exactly where something is lacking") {
    const Told t(0.2, 0.9);
    CHECK(remedy(FactorName::softness, t.judged, t.plan) == "finer fibre");
    for (std::size_t f = 0; f < factor_count; ++f)
        if (static_cast<FactorName>(f) != FactorName::softness)
            CHECK(remedy(static_cast<FactorName>(f), t.judged, t.plan).empty());
}

TEST_CASE("an obstacle is told in its own words, with what to do about it") {
    const Told t(0.9, 0.9, {{}, {}, 0, {millimetres(3.25)}});
    const std::string said{words(Obstacle::finer_than_needles)};
    CHECK(said_among(t.against(), said));
    CHECK(sentence(FactorName::equipment, t.judged, t.plan, t.yarn) == "equipment: " + said);
    CHECK(remedy(FactorName::equipment, t.judged, t.plan).find("borrow") == 0);
}

TEST_CASE("too fine and too thick are told apart, with what to do about each") {
    const auto told = [](int finest, int thickest) {
        Told t(0.9, 0.9);
        t.article.finest = finest, t.article.thickest = thickest;
        t.judged = judge(t.plan, t.yarn);  // the yarn is of class 2
        return Words{sentence(FactorName::fineness, t.judged, t.plan, t.yarn),
                     t.against().empty() ? "" : t.against()[0],
                     remedy(FactorName::fineness, t.judged, t.plan)};
    };
    CHECK(told(1, 3) == Words{"fineness: a usual weight for a scarf", "", ""});
    CHECK(told(4, 5) == Words{"fineness: 2 weight classes finer than a scarf is usually made in",
                              "finer yarn than usual for it",
                              "hold it double, or choose what is made in finer yarn"});
    CHECK(told(0, 1) == Words{"fineness: 1 weight class thicker than a scarf is usually made in",
                              "thicker yarn than usual for it",
                              "choose what is made in thicker yarn"});
}

TEST_CASE("skeins that are several yarns are always told, last") {
    Told t(0.2, 0.9);
    t.yarn.agreement.answer = SameYarn::differ;
    CHECK(t.against() == Words{"may prickle", "the skeins are several yarns"});
}

TEST_CASE("every factor that is badly met has words against it and a remedy") {
    const Told t(0.9, 0.9);
    for (std::size_t f = 0; f < factor_count; ++f) {
        auto judged = t.judged;
        judged.factors[f] = {0, 0.9, 0.5, 0.2, 40};
        INFO(words(static_cast<FactorName>(f)));
        CHECK_FALSE(remedy(static_cast<FactorName>(f), judged, t.plan).empty());
        CHECK(said_against(judged, t.plan, t.yarn).size() == 1);
    }
}
