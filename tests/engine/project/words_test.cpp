#include "engine/project/words.hpp"

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>

#include "engine/units/failure.hpp"
#include "tests/engine/invented.hpp"
#include "tests/engine/project/fabrics.hpp"

using namespace gristwright;
using invented::yarn;

namespace {

std::string centimetres_of(Length l) {
    return std::to_string(std::lround(in_centimetres(l))) + " cm";
}
std::string metres_of(Length l) { return std::to_string(std::lround(in_metres(l))) + " m"; }

std::string filled(const char* step, const Plan& plan) {
    const auto needle = [](Length q) { return std::to_string(in_millimetres(q)) + " mm"; };
    const auto mass = [](Mass q) { return std::to_string(in_grams(q)) + " g"; };
    return filled_in(step, plan, {centimetres_of, metres_of, mass, needle});
}

}  // namespace

TEST_CASE("a knitted plan's own numbers stand in the step") {
    const auto scarf = invented::knitted_scarf();
    const auto p = plan(scarf, yarn(900, 220), fabrics, {}, {});
    const auto& body = p.pieces[0];
    CHECK(filled("plain words", p) == "plain words");
    CHECK(filled("", p).empty());
    CHECK(filled("{body.stitches} st, {body.rows} rows", p) ==
          std::to_string(body.stitches) + " st, " + std::to_string(body.rows) + " rows");
    CHECK(filled("{size}{size}", p) == centimetres_of(p.size) + centimetres_of(p.size));
    CHECK(filled("{body.width}", p) == centimetres_of(body.outline.width));
    CHECK(filled("{body.metres}", p) == metres_of(body.metres.mid));
    CHECK(filled("{body.count} of {body.fabric}", p) == "1 of plain");
    CHECK(filled("on {needle}", p).find("mm") != std::string::npos);
}

TEST_CASE("a woven plan's own numbers stand in the step") {
    const auto scarf = invented::woven_scarf();
    const auto p = plan(scarf, yarn(900, 220), fabrics, {{ends_per_inch(12.5)}, {}, 2, {}}, {});
    const auto& panel = p.pieces[0].panel;
    CHECK(filled("{body.ends}/{body.picks}", p) ==
          std::to_string(panel.ends) + "/" + std::to_string(panel.picks));
    CHECK(filled("{heddle}", p) == "12.5 epi heddle");
    CHECK(filled("{body.warp_each}", p) == centimetres_of(panel.warp_per_end));
    CHECK(filled("{body.warp} and {body.weft}", p) ==
          metres_of(panel.warp) + " and " + metres_of(panel.weft));
}

TEST_CASE("a word nobody can fill in is named, a brace left open is told") {
    const auto scarf = invented::knitted_scarf();
    const auto p = plan(scarf, yarn(900, 220), fabrics, {}, {});
    for (const char* word :
         {"{cuff.rows}", "{body.colour}", "{body}", "{}", "{heddle.rows}", "{heddle}"}) {
        const auto said = "'" + std::string(word) + "' cannot be filled in";
        CHECK_THROWS_AS(filled(word, p), std::invalid_argument);
        CHECK_THROWS_WITH_AS(check_words(word, scarf), said.c_str(), std::invalid_argument);
    }
    CHECK_THROWS_AS(check_words("knit {body.rows", scarf), std::invalid_argument);
}

TEST_CASE("each craft has its own words, and what passes the check can be filled in") {
    const auto knitted = invented::knitted_scarf(), woven = invented::woven_scarf();
    const auto knit_plan = plan(knitted, yarn(900, 220), fabrics, {}, {});
    const auto weave_plan = plan(woven, yarn(900, 220), fabrics, {}, {});
    for (const char* word :
         {"{needle}", "{heddle}", "{size}", "{body.stitches}", "{body.rows}", "{body.ends}",
          "{body.picks}", "{body.reed}", "{body.woven}", "{body.warp_each}", "{body.warp}",
          "{body.weft}", "{body.fabric}", "{body.width}", "{body.length}", "{body.metres}",
          "{body.grams}", "{body.count}"}) {
        INFO(word);
        int takers = 0;
        const auto accepts = [&](const Template& article, const Plan& p) {
            try {
                check_words(word, article);
            } catch (const std::invalid_argument&) {
                return;
            }
            ++takers;
            CHECK_FALSE(filled(word, p).empty());
        };
        accepts(knitted, knit_plan);
        accepts(woven, weave_plan);
        CHECK(takers >= 1);
    }
    CHECK_THROWS_AS(check_words("{body.ends}", knitted), std::invalid_argument);
    CHECK_THROWS_AS(check_words("{needle}", woven), std::invalid_argument);
}

// 12 cm were said whatever fringe was wanted, and "twist the fringe" of none.
TEST_CASE("the steps of a fringe are said where there is one, with the fringe that is wanted") {
    auto scarf = invented::woven_scarf();
    scarf.steps = {"[fringe] begin {fringe} from the knots", "[no fringe] cut off close", "wash"};
    Equipment owned;
    owned.fringe = centimetres(5);
    const auto fringed = plan(scarf, yarn(900, 220), fabrics, owned, {});
    REQUIRE(steps_said(*fringed.article).size() == 2);
    CHECK(filled(std::string(steps_said(*fringed.article)[0]).c_str(), fringed) ==
          "begin 5 cm from the knots");
    owned.fringe = Length{};
    const auto bare = plan(scarf, yarn(900, 220), fabrics, owned, {});
    REQUIRE(steps_said(*bare.article).size() == 2);
    CHECK(steps_said(*bare.article)[0] == "cut off close");
    CHECK_NOTHROW(check_words(scarf.steps[0], scarf));
    CHECK_THROWS_AS(check_words("[tassel] tie it", scarf), Refused);
    CHECK_THROWS_AS(check_words("{fringe}", invented::knitted_scarf()), Refused);
}
