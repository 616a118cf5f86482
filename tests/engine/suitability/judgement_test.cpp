#include "engine/suitability/judgement.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>

#include "engine/project/desirability.hpp"
#include "engine/suitability/constants.hpp"
#include "engine/units/failure.hpp"
#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

static_assert(desire_more(0.7, 0.7, 0.5) == 1);
static_assert(desire_more(0.9, 0.7, 0.5) == 1);
static_assert(desire_more(0.25, 0.75, 0.5) == 0);
static_assert(desire_more(-3, 0.7, 0.5) == 0);
static_assert(desire_within(1.0, 0.9, 1.1, 0.4) == 1);
static_assert(desire_within(0.5, 0.9, 1.1, 0.4) == 0);
static_assert(desire_within(1.6, 0.9, 1.1, 0.4) == 0);

namespace {

const KnitFabric plain{};
const Weave tabby{};
const PieceTemplate body{};

// A knitted plan in the middle of its band with nothing in the way; only what a test changes
// bears on its score.
struct Case {
    Template article;
    Plan plan;
    YarnProfile yarn = invented::yarn(500, 200);

    Case() {
        plan.article = invented::lent(article);
        plan.pieces.resize(1);
        plan.pieces[0].piece = invented::lent(body);
        plan.pieces[0].knit.emplace();
        plan.pieces[0].knit->fabric = invented::lent(plain);
        plan.pieces[0].knit->tightness = 1.05;
        plan.pieces[0].knit->wanted = {0.95, 1.15};
    }
    Case(const Case&) = delete;

    void wish(Asked what, double at_least, double weight) {
        article.wishes[static_cast<std::size_t>(what)] = {at_least, weight};
    }
    void has(TraitName what, double value) {
        yarn.traits[static_cast<std::size_t>(what)].value = value;
    }
    Judgement judged() const { return judge(plan, yarn); }
};

// The score again from its published form (Derringer and Suich 1980): prod d^w to the 1 / sum w;
// what must be borrowed lowers the whole.
double score_of(const Judgement& j, std::optional<FactorName> made_good = {}) {
    double product = 1, weights = 0;
    for (std::size_t i = 0; i < factor_count; ++i) {
        const auto& f = j.factors[i];
        if (static_cast<FactorName>(i) == FactorName::equipment) continue;
        const bool good = made_good == static_cast<FactorName>(i);
        product *= std::pow(good ? 1 : f.desirability, f.weight);
        weights += f.weight;
    }
    const bool borrowed_too = made_good == FactorName::equipment;
    return 100 * std::pow(product, 1 / weights) *
           (borrowed_too ? 1 : j.factor(FactorName::equipment).desirability);
}

}  // namespace

TEST_CASE("desirability falls in a straight line between all and nothing") {
    CHECK(desire_more(0.5, 0.7, 0.5) == Approx(0.6));
    CHECK(desire_within(0.8, 0.9, 1.1, 0.4) == Approx(0.75));
    CHECK(desire_within(1.3, 0.9, 1.1, 0.4) == Approx(0.5));
}

TEST_CASE("a yarn that has all that is wished for scores 100 and loses nothing") {
    Case c;
    c.wish(Asked::softness, 0.3, 0.7);
    const auto j = c.judged();
    CHECK(j.score == Approx(100));
    for (const auto& f : j.factors) CHECK(f.cost == 0);
}

TEST_CASE("the weighted geometric mean, worked by hand") {
    // Softness 0.50 of 0.65 + 0.05 wished, reach 0.6: d = 1 - 0.20 / 0.6 = 0.6667, weight 0.5;
    // cover and fineness d = 1, weights 0.7 and 0.9. Score 100 x 0.6667^(0.5 / 2.1) = 90.80;
    // wholly soft it would be 100.
    Case c;
    c.wish(Asked::softness, 0.65, 0.5);
    const auto j = c.judged();
    const auto& softness = j.factor(FactorName::softness);
    CHECK(softness.had == 0.5);
    CHECK(softness.desirability == Approx(2 / 3.0));
    CHECK(j.score == near(90.80, 1e-3));
    CHECK(softness.cost == near(9.20, 1e-3));
}

TEST_CASE("a factor's cost is the score without its loss minus the score") {
    Case c;
    c.wish(Asked::softness, 0.7, 0.7);
    c.wish(Asked::wear, 0.6, 0.3);
    c.wish(Asked::warmth, 0.9, 0.5);
    c.wish(Asked::consistency, 0.9, 0.4);
    c.yarn.consistency = 0.4;
    c.plan.pieces[0].knit->tightness = 1.25;
    c.plan.obstacles = {Obstacle::no_needle_fits};
    const auto j = c.judged();
    CHECK(j.score == Approx(score_of(j)));
    CHECK(j.score > 30);
    for (std::size_t i = 0; i < factor_count; ++i)
        CHECK(j.factors[i].cost == near(score_of(j, static_cast<FactorName>(i)) - j.score, 1e-9));
    CHECK(j.factor(FactorName::equipment).desirability == Approx(0.93));
    CHECK(j.factor(FactorName::cover).desirability == Approx(0.75));
}

TEST_CASE("a wish unmet lowers and never rules out, shafts that are missing do") {
    Case c;
    c.wish(Asked::softness, 0.9, 0.4);
    c.has(TraitName::softness, 0.0);
    const auto one = c.judged();
    CHECK(one.score > 40);
    CHECK(one.factor(FactorName::softness).desirability == Approx(0.1));
    c.plan.obstacles = {Obstacle::needs_shafts};
    const auto two = c.judged();
    CHECK(two.score == 0);
    CHECK(two.factor(FactorName::equipment).cost == Approx(one.score));
}

TEST_CASE("a need unmet takes its share, whatever else the yarn has, and costs that much") {
    Case c;
    Demand felts;
    felts.trait = TraitName::felting;
    felts.enough = 0.6, felts.lacking = 0.2, felts.left = 0.3;
    felts.reason = "does not felt";
    c.article.calling =
        std::make_shared<const Calling>(Calling{{std::make_shared<const Demand>(felts)}, {}});
    c.has(TraitName::felting, 0.1);
    for (const double softness : {0.2, 0.6, 1.0}) {  // no surplus buys it back
        c.has(TraitName::softness, softness);
        CHECK(c.judged().score == Approx(30));
    }
    c.has(TraitName::felting, 0.4);  // half met
    const auto half = c.judged();
    REQUIRE(half.unmet.size() == 1);
    CHECK(half.unmet[0].met == Approx(0.5));
    CHECK(half.score == Approx(65));
    CHECK(half.unmet[0].cost == Approx(35));
    CHECK(half.unmet[0].demand->reason == "does not felt");
    c.has(TraitName::felting, 0.6);
    CHECK(c.judged().score == Approx(100));
    CHECK(c.judged().unmet.empty());
}

TEST_CASE("a trait that lacks lacks once, however many needs ask for it") {
    Case c;
    Demand ribs, shape, wears;
    ribs.trait = shape.trait = TraitName::elasticity;
    ribs.enough = shape.enough = 0.6, ribs.lacking = shape.lacking = 0.2;
    ribs.left = 0.5, shape.left = 0.4;
    wears.trait = TraitName::wear;
    wears.enough = 0.6, wears.lacking = 0.2, wears.left = 0.5;
    c.article.calling = std::make_shared<const Calling>(
        Calling{{std::make_shared<const Demand>(ribs), std::make_shared<const Demand>(shape),
                 std::make_shared<const Demand>(wears)},
                {}});
    c.has(TraitName::elasticity, 0.1);
    c.has(TraitName::wear, 1);
    const auto one = c.judged();
    REQUIRE(one.unmet.size() == 1);
    CHECK(one.score == Approx(40));  // the one that leaves least
    c.has(TraitName::wear, 0.1);
    const auto two = c.judged();
    REQUIRE(two.unmet.size() == 2);
    CHECK(two.score == Approx(20));  // another trait takes its own share
}

TEST_CASE("a need that runs downwards asks for less: three plies close lace") {
    Case c;
    Demand open;
    open.enough = 2, open.lacking = 4, open.left = 0.5;
    c.article.calling =
        std::make_shared<const Calling>(Calling{{std::make_shared<const Demand>(open)}, {}});
    const auto score = [&](int plies) {
        c.yarn.plies = plies;
        return c.judged().score;
    };
    CHECK(score(1) == Approx(100));
    CHECK(score(2) == Approx(100));
    CHECK(score(3) == Approx(75));
    CHECK(score(4) == Approx(50));
    CHECK(score(0) == Approx(75));  // not known: half of it
}

TEST_CASE(
    "what every yarn can serve lifts no yarn: it is weighed with those that serve less well") {
    Case c;
    const auto score = [&](std::vector<double> levels) {
        c.article.calling = std::make_shared<const Calling>(Calling{{}, std::move(levels)});
        return c.judged();
    };
    const auto anyone = score({1, 1, 1, 1, 1});
    CHECK(anyone.better_than == 0);
    CHECK(anyone.score == Approx(65));  // 0.65 x 1 + 0.35 x 0
    const auto few = score({0.1, 0.2, 0.3, 0.4, 0.5});
    CHECK(few.better_than == 1);
    CHECK(few.score == Approx(100));
}

TEST_CASE("what has no weight costs nothing, however badly it is met") {
    Case c;
    c.wish(Asked::softness, 1, 0);
    c.has(TraitName::softness, 0);
    CHECK(c.judged().score == Approx(100));
}

TEST_CASE("more of a trait never lowers the score of an article that wishes for it") {
    for (const auto& [asked, trait] :
         {std::pair{Asked::definition, TraitName::definition},
          std::pair{Asked::softness, TraitName::softness}, std::pair{Asked::wear, TraitName::wear},
          std::pair{Asked::warmth, TraitName::warmth}, std::pair{Asked::drape, TraitName::drape},
          std::pair{Asked::elasticity, TraitName::elasticity}}) {
        Case c;
        c.wish(asked, 0.8, 0.6);
        double before = -1;
        for (int percent = 0; percent <= 100; percent += 5) {
            c.has(trait, percent / 100.0);
            const double score = c.judged().score;
            CHECK(score >= before);
            before = score;
        }
        c.has(trait, 0);
        CHECK(c.judged().score < before);
    }
}

TEST_CASE("a stitch that must be read asks for definition, whatever the article says") {
    Case c;
    KnitFabric cables;
    cables.definition = 0.6;
    c.wish(Asked::definition, 0.2, 0.5);
    CHECK(c.judged().factor(FactorName::definition).wanted == 0.2);
    c.plan.pieces[0].knit->fabric = invented::lent(cables);
    CHECK(c.judged().factor(FactorName::definition).wanted == 0.6);
    CHECK(c.judged().score < 100);
}

TEST_CASE("warp fitness is asked of woven articles only, drape is freer in an opener cloth") {
    Case c;
    c.wish(Asked::warp_fitness, 0.9, 0.8);
    CHECK(c.judged().factor(FactorName::warp_fitness).weight == 0);
    c.article.craft = Craft::woven;
    auto& piece = c.plan.pieces[0];
    piece.knit.reset();
    piece.woven.emplace();
    piece.woven->weave = invented::lent(tabby);
    piece.woven->wanted = {0.6, 0.7};
    piece.woven->share = 0.65;
    const auto open = c.judged();
    CHECK(open.factor(FactorName::warp_fitness).weight == 0.8);
    CHECK(open.factor(FactorName::cover).desirability == 1);
    piece.woven->share = 0.85;
    const auto close = c.judged();
    CHECK(close.factor(FactorName::cover).desirability == Approx(0.5));
    CHECK(close.factor(FactorName::drape).had < open.factor(FactorName::drape).had);
}

TEST_CASE("a yarn of a weight that the article is not made in falls by the classes it lies away") {
    Case c;
    const auto fineness = [&](int finest, int thickest) {
        c.article.finest = finest, c.article.thickest = thickest;
        return c.judged().factor(FactorName::fineness).desirability;
    };
    CHECK(fineness(0, 7) == 1);
    CHECK(fineness(2, 2) == 1);
    CHECK(fineness(3, 7) == Approx(0.6));
    CHECK(fineness(0, 0) == Approx(0.2));
    CHECK(fineness(6, 7) == Approx(0.02));
    c.yarn.class_by_wraps.resize(1);  // lofty: by wraps it is of the weight wanted
    c.yarn.class_by_wraps[0].number = 5;
    CHECK(fineness(6, 7) == Approx(0.6));
    CHECK(c.judged().factor(FactorName::fineness).had == 5);
    CHECK(c.judged().factor(FactorName::fineness).wanted == 6);
    c.yarn.class_by_wraps[0].number = 4;  // as far on the other side: the grist is named
    CHECK(fineness(3, 3) == Approx(0.6));
    CHECK(c.judged().factor(FactorName::fineness).had == 2);
}

TEST_CASE("a lowered obstacle lowers: borrowed a little, stopped to nothing") {
    Case c;
    double before = c.judged().score;
    for (const auto worse : {Obstacle::no_needle_fits, Obstacle::loom_too_narrow}) {
        c.plan.obstacles.push_back(worse);
        CHECK(c.judged().score < before);
        before = c.judged().score;
    }
    CHECK(before == 0);
}

TEST_CASE("four grades of service meet without a gap, and every factor has its own words") {
    CHECK(serves(100) == Serves::well);
    CHECK(serves(80) == Serves::well);
    CHECK(serves(79.99) == Serves::fairly);
    CHECK(serves(60) == Serves::fairly);
    CHECK(serves(59.99) == Serves::poorly);
    CHECK(serves(35) == Serves::poorly);
    CHECK(serves(34.99) == Serves::not_at_all);
    CHECK(serves(0) == Serves::not_at_all);
    std::set<std::string_view> said;
    for (std::size_t i = 0; i < factor_count; ++i) said.insert(words(static_cast<FactorName>(i)));
    CHECK(said.size() == factor_count);
    CHECK(words(Serves::well) == "serves well");
    CHECK(words(Serves::not_at_all) == "does not serve");
}

TEST_CASE("drape is the cloth's looseness and the yarn's own, six parts to four (judgement)") {
    Case c;
    c.wish(Asked::drape, 0.9, 1);
    c.has(TraitName::drape, 0.5);
    // Tightness 1.6 is as firm as board, 0.6 as loose as holds together: 1.1 lies in the middle.
    for (const auto& [tightness, loose] :
         {std::pair{1.6, 0.0}, {1.1, 0.5}, {0.85, 0.75}, {0.6, 1.0}, {0.3, 1.0}}) {
        CAPTURE(tightness);
        c.plan.pieces[0].knit->tightness = tightness;
        CHECK(c.judged().factor(FactorName::drape).had == near(0.6 * loose + 0.4 * 0.5, 1e-9));
    }
}

TEST_CASE("without the tables a judgement is refused, not a score of nothing") {
    // It was "suitability 0: thicker yarn than usual for it", of a yarn that nothing was known of.
    Case plain_case;
    plain_case.yarn.class_by_grist.clear();
    CHECK_THROWS_AS(plain_case.judged(), OurMistake);
}
