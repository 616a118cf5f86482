#include "cli/output/yarn_words.hpp"

#include <doctest/doctest.h>

#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

TEST_CASE("every assumption and every hint has words of its own") {
    const Units metric(UnitChoice::metric), imperial(UnitChoice::imperial);
    std::vector<std::string> said;
    for (int i = 0; i <= static_cast<int>(Assumed::wraps_laid); ++i)
        said.push_back(words({static_cast<Assumed>(i), wraps_per_inch(16), grams(0.1)}, metric));
    for (int i = 0; i <= static_cast<int>(Measurement::fibre); ++i)
        said.push_back(words({static_cast<Measurement>(i), 0.12, 0.07, "D"}));
    for (std::size_t i = 0; i < said.size(); ++i) {
        CHECK_FALSE(said[i].empty());
        for (std::size_t k = 0; k < i; ++k) CHECK(said[i] != said[k]);
    }
}

TEST_CASE("figures of assumptions and hints are said with their units, imperial ones too") {
    const Units metric(UnitChoice::metric), imperial(UnitChoice::imperial);
    const Assumption scale{Assumed::scale_step, {}, grams(0.1)};
    CHECK(words(scale, metric) == "scale read to 0.1 g");
    CHECK(words(scale, imperial) == "scale read to 0.0035 oz");
    CHECK(words(Hint{Measurement::swatch, 0.12, 0.07, ""}) ==
          "knit and wash a swatch, count a gauge: yarn for plain cloth within ±20 % becomes ±12 %");
    CHECK(words(Hint{Measurement::finer_scale, 0.02, 0, "D"}) ==
          "weigh on a finer scale: of D alone ±3.3 % comes from the scale");
}

TEST_CASE("a yarn's own assumptions and hints are told, each once") {
    const auto& q = asked::heron();
    CHECK(assumptions(q.yarn, q.units).size() == q.yarn.assumed.size());
    CHECK(hints(q.yarn).size() == what_sharpens(q.yarn).size());
    CHECK(holds(hints(q.yarn).front(), "swatch"));
}

TEST_CASE("every basis, contradiction and caution has words of its own") {
    const auto& yarn = asked::heron().yarn;
    Evidence known;
    known.habit = Estimate<double>{1.08, 0.02};
    std::vector<std::string> said;
    for (int i = 0; i <= static_cast<int>(Basis::looks_alike); ++i)
        said.push_back(words(Standing{static_cast<Basis>(i), "garter", true, false, 3, {}}, known));
    for (int i = 0; i <= static_cast<int>(Seen::length_kept); ++i)
        said.push_back(words(Contradiction{static_cast<Seen>(i), 0.2}));
    for (int i = 0; i <= static_cast<int>(Beware::two_strands); ++i)
        said.push_back(words(YarnCaution{static_cast<Beware>(i), "held double", {}}, yarn,
                             Units{UnitChoice::metric}));
    for (std::size_t i = 0; i < said.size(); ++i) {
        CHECK_FALSE(said[i].empty());
        for (std::size_t k = 0; k < i; ++k) CHECK(said[i] != said[k]);
    }
}

TEST_CASE("what other batches tell is said with its figures") {
    Evidence known;
    known.habit = Estimate<double>{1.08, 0.02};
    const MakeUp made{Preparation::carded, Draw::long_draw, 2, "sheep"};
    CHECK(words(Standing{Basis::habit, "", true, false, 3, {}}, known) ==
          "your swatches in 3 other batches, which come out 8 % tighter than the table");
    CHECK(words(Standing{Basis::looks_alike, "", true, false, 1, made}, known) ==
          "looks rated in 1 other batch made up alike (carded, long draw, 2-ply, sheep)");
    CHECK(habit_words({0.96, 0.02}) == "4 % looser than the table");
    CHECK(habit_words({1.001, 0.02}) == "as the table says");
    CHECK(words(Contradiction{Seen::gauge, -0.31}) ==
          "the gauge is 31 % less than this yarn lets expect: is it this yarn, counted and "
          "measured as typed?");
}
