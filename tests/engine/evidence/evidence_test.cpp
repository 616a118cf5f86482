// Conjugate updates against a grid, and what swatches do to a plan.
#include "engine/yarn/evidence.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <stdexcept>

#include "engine/allocation/constants.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/evidence/hands.hpp"
#include "engine/evidence/swatch.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

YarnProfile heron() {
    Batch batch;
    for (const auto& [m, g] : {std::pair{171.0, 38.5}, {204.0, 45.0}, {188.0, 43.0}, {96.0, 21.6}})
        batch.skeins.push_back({"skein", metres(m), grams(g), LengthState::washed});
    batch.wraps = WrapsReading{wraps_per_inch(16)};
    return profile(batch, {});
}

KnitFabric plain() {
    KnitFabric fabric;
    fabric.name = "stocking stitch";
    return fabric;
}

}  // namespace

TEST_CASE("a posterior is what a grid over the logarithm gives") {
    const Estimate<double> prior{100, 0.12}, seen{112, 0.05};
    double weights = 0, mean = 0, square = 0;
    for (double x = 4; x < 5.5; x += 1e-4) {
        const double p = std::exp(-0.5 * std::pow((x - std::log(100.0)) / 0.12, 2) -
                                  0.5 * std::pow((x - std::log(112.0)) / 0.05, 2));
        weights += p;
        mean += p * x;
        square += p * x * x;
    }
    mean /= weights;
    const auto both = posterior(prior, seen);
    CHECK(std::log(both.mid) == near(mean, 1e-6));
    CHECK(both.spread == near(std::sqrt(square / weights - mean * mean), 1e-4));
}

TEST_CASE("the order of what is seen does not matter, and more of it narrows") {
    const Estimate<double> prior{1, 0.12}, a{1.1, 0.05}, b{0.97, 0.03};
    const auto ab = posterior(posterior(prior, a), b), ba = posterior(posterior(prior, b), a);
    CHECK(ab.mid == doctest::Approx(ba.mid));
    CHECK(ab.spread == doctest::Approx(ba.spread));
    CHECK(ab.spread < posterior(prior, a).spread);
    CHECK(posterior({5, 0}, a).mid == 5);
}

TEST_CASE("a washed swatch moves the gauge to what was counted and narrows it") {
    const auto yarn = heron();
    Evidence known;
    KnittedSwatch swatch;
    swatch.stitches = {30, centimetres(10)};
    observe(swatch, plain(), yarn, known);
    REQUIRE(known.gauge);
    const auto before = knit_cloth(yarn, plain(), Firmness::ordinary, {});
    const auto after = knit_cloth(informed(yarn, known), plain(), Firmness::ordinary, {});
    CHECK(after.from_swatch);
    CHECK(after.gauge.spread < before.gauge.spread / 2);
    CHECK(in_stitches_per_10cm(after.gauge.mid) == doctest::Approx(30));
    CHECK(after.metres_per_area.spread < before.metres_per_area.spread);
    CHECK(known.questions.empty());
    CHECK(known.stands_on.size() == 1);
}

TEST_CASE("the needle of a swatch is named for its gauge, and scaled for another") {
    const auto yarn = heron();
    const auto planned = [&](std::optional<Length> needle, Firmness purpose) {
        Evidence known;
        KnittedSwatch swatch;
        swatch.stitches = {22, centimetres(10)};
        swatch.firmness = Firmness::ordinary;
        swatch.needle = needle;
        observe(swatch, plain(), yarn, known);
        return knit_cloth(informed(yarn, known), plain(), purpose, {});
    };
    CHECK(needle_known(planned({}, Firmness::ordinary)) == Length{});
    const auto named = planned(millimetres(4.5), Firmness::ordinary);
    CHECK(needle_known(named) == millimetres(4.5));
    // Usual hands would take another needle for 22 stitches; hers decides.
    CHECK(needle_known(planned(millimetres(3.75), Firmness::ordinary)) == millimetres(3.75));
    const auto firm = planned(millimetres(4.5), Firmness::sock);
    CHECK(firm.gauge.mid > named.gauge.mid);
    CHECK(needle_known(firm) < millimetres(4.5));
    CHECK(firm.needle < millimetres(4.5));
    CHECK(needle_known(planned(millimetres(5.5), Firmness::sock)) > needle_known(firm));
}

TEST_CASE("weighed and measured it tells the metres per area too") {
    const auto yarn = heron();
    Evidence known;
    KnittedSwatch swatch;
    const auto expected = knit_cloth(yarn, plain(), Firmness::ordinary, {});
    swatch.stitches = {in_stitches_per_10cm(expected.gauge.mid), centimetres(10)};
    swatch.width = swatch.length = centimetres(20);
    // A twentieth more yarn than the model says.
    swatch.mass =
        expected.metres_per_area.mid * square_metres(0.04) * 1.05 * yarn.linear_density.mid;
    observe(swatch, plain(), yarn, known);
    REQUIRE(known.weighed.size() == 1);
    CHECK(known.weighed[0].metres.mid == near(1.05, 0.02));
    CHECK(known.weighed[0].metres.spread < 0.04);
}

TEST_CASE("a swatch that contradicts the yarn is questioned, and an unwashed one counts for less") {
    const auto yarn = heron();
    Evidence odd, washed, unwashed;
    KnittedSwatch swatch;
    swatch.stitches = {60, centimetres(10)};
    observe(swatch, plain(), yarn, odd);
    CHECK(odd.questions.size() == 1);
    swatch.stitches = {30, centimetres(10)};
    observe(swatch, plain(), yarn, washed);
    swatch.washed = false;
    observe(swatch, plain(), yarn, unwashed);
    CHECK(unwashed.gauge->spread > washed.gauge->spread);
    swatch.stitches = {0, centimetres(10)};
    CHECK_THROWS_AS(observe(swatch, plain(), yarn, odd), std::invalid_argument);
}

TEST_CASE("a loose swatch of laceweight is no surprise: it may be for lace") {
    // Found a defect: 24 st/10 cm were said to be half of what laceweight lets expect.
    Batch batch;
    batch.skeins.push_back({"lace", metres(736), grams(68), LengthState::washed});
    const auto yarn = profile(batch, {});
    Evidence known;
    KnittedSwatch swatch;
    swatch.stitches = {24, centimetres(10)};
    observe(swatch, plain(), yarn, known);
    CHECK(known.questions.empty());
}

TEST_CASE("two swatches that contradict each other never answer more narrowly than one") {
    const auto yarn = heron();
    for (double second = 20; second < 40; second += 0.5) {
        Evidence one, both;
        KnittedSwatch swatch;
        swatch.stitches = {28, centimetres(10)};
        observe(swatch, plain(), yarn, one);
        both = one;
        swatch.stitches = {second, centimetres(10)};
        observe(swatch, plain(), yarn, both);
        const double apart = std::abs(std::log(second / 28)) / std::hypot(one.gauge->spread, 0.035);
        CAPTURE(second);
        if (apart > 2) CHECK(both.gauge->spread > one.gauge->spread);
        if (apart < 0.5) CHECK(both.gauge->spread < one.gauge->spread);
    }
}

TEST_CASE("a woven sample tells how much width and length the cloth keeps") {
    Evidence known;
    WovenSwatch swatch;
    swatch.reed_width = centimetres(20);
    swatch.width = centimetres(16.5);
    swatch.length = centimetres(21.4);
    observe(swatch, Finish::light, 1.0, known);
    REQUIRE(known.width_kept);
    CHECK(known.width_kept->mid < 0.825);
    CHECK(known.width_kept->mid > 1 - width_loss(Finish::light, 1).mid);  // between seen and usual
    CHECK(!known.length_kept);
    const auto cloth =
        weave_cloth(informed(heron(), known), {}, {Spacing::scarf, Finish::light}, {});
    CHECK(cloth.width.mid == doctest::Approx(1 - known.width_kept->mid));
}

TEST_CASE("a rated look moves definition towards what was seen") {
    Evidence known;
    known.looks = {0.8};
    auto yarn = heron();
    yarn.traits[static_cast<std::size_t>(TraitName::definition)] = {0.35, 0.12, {}};
    const auto told = informed(yarn, known).trait(TraitName::definition);
    CHECK(told.value > 0.6);
    CHECK(told.value < 0.8);
    CHECK(told.spread < 0.08);
}

TEST_CASE("a person's habit shrinks towards none, less so with more swatches") {
    CHECK(gauge_habit({}).mid == 1);
    const double one = gauge_habit({{1.10, 0.02}}).mid,
                 five = gauge_habit(std::vector<Estimate<double>>(5, {1.10, 0.02})).mid;
    CHECK(one > 1.03);
    CHECK(one < 1.07);
    CHECK(five > one);
    CHECK(five < 1.10);
}

TEST_CASE("the 90 % ranges of 2,000 simulated spinners hold 88 to 92 %") {
    std::mt19937_64 random(11);
    std::normal_distribution<double> normal;
    int held = 0;
    constexpr int spinners = 2000;
    for (int i = 0; i < spinners; ++i) {
        const double truth = std::exp(0.12 * normal(random));
        Estimate<double> known{1, 0.12};
        for (const double spread : {0.05, 0.03})
            known = posterior(known, {truth * std::exp(spread * normal(random)), spread});
        held += truth >= known.low() && truth <= known.high() ? 1 : 0;
    }
    CHECK(held >= spinners * 88 / 100);
    CHECK(held <= spinners * 92 / 100);
}

TEST_CASE("a swatch is questioned from 2.5 standard deviations on (judgement)") {
    const auto yarn = heron();
    const auto expected = knit_cloth(yarn, plain(), Firmness::ordinary, {}).gauge;
    int questioned = 0, taken = 0;
    for (double threads = 20; threads < 50; threads += 0.5) {
        CAPTURE(threads);
        KnittedSwatch swatch;
        swatch.firmness = Firmness::ordinary;
        swatch.stitches = {threads, centimetres(10)};
        Evidence known;
        observe(swatch, plain(), yarn, known);
        const double counting =
            std::hypot(constants::read_error / threads, constants::unevenness / std::sqrt(threads));
        const Estimate<double> seen{threads / 0.10, std::hypot(counting, constants::rest_differs)};
        const double apart = surprise({expected.mid.si(), expected.spread}, seen);
        CHECK(known.questions.empty() == (apart <= 2.5));
        ++(known.questions.empty() ? taken : questioned);
    }
    CHECK(questioned > 5);
    CHECK(taken > 5);
}

TEST_CASE("a weighed swatch narrows its own fabric, and leaves another's range as it was") {
    // Found a defect: a stocking-stitch swatch made a mesh stole's metres known to 3 %.
    const auto yarn = heron();
    KnitFabric mesh;
    mesh.name = "mesh";
    mesh.growth = 1.6, mesh.growth_low = 1.35, mesh.growth_high = 1.95;
    const auto before = knit_cloth(yarn, mesh, Firmness::ordinary, {});
    Evidence known;
    KnittedSwatch swatch;
    swatch.firmness = Firmness::ordinary;
    const auto expected = knit_cloth(yarn, plain(), Firmness::ordinary, {});
    swatch.stitches = {in_stitches_per_10cm(expected.gauge.mid), centimetres(10)};
    swatch.width = swatch.length = centimetres(20);
    swatch.mass = expected.metres_per_area.mid * square_metres(0.04) * yarn.linear_density.mid;
    observe(swatch, plain(), yarn, known);
    const auto own = knit_cloth(informed(yarn, known), plain(), Firmness::ordinary, {});
    const auto other = knit_cloth(informed(yarn, known), mesh, Firmness::ordinary, {});
    CHECK(own.metres_per_area.spread < 0.05);
    CHECK(other.metres_per_area.spread >= fabric_range(other));
    CHECK(other.metres_per_area.spread < before.metres_per_area.spread);
}

TEST_CASE("two weighed swatches that contradict each other never answer more narrowly than one") {
    const auto yarn = heron();
    const auto expected = knit_cloth(yarn, plain(), Firmness::ordinary, {});
    const auto weighed = [&](double share, Evidence& known) {
        KnittedSwatch swatch;
        swatch.stitches = {in_stitches_per_10cm(expected.gauge.mid), centimetres(10)};
        swatch.width = swatch.length = centimetres(20);
        swatch.mass =
            expected.metres_per_area.mid * square_metres(0.04) * share * yarn.linear_density.mid;
        observe(swatch, plain(), yarn, known);
        return known.weighed[0].metres.spread;
    };
    Evidence known;
    const double one = weighed(1.0, known);
    CHECK(weighed(1.3, known) > one);
}

// A swatch of 5.2 g was believed whose stitches had 7 mm of yarn each where 12 are usual: socks
// then took a third less.
TEST_CASE("a mass too small for its stitches is questioned and not counted, unless insisted on") {
    const auto yarn = heron();
    KnittedSwatch swatch;
    swatch.stitches = {24, centimetres(10)};
    swatch.rows = Counted{33, centimetres(10)};
    swatch.width = swatch.length = centimetres(15);
    const auto cloth = knit_cloth(yarn, plain(), Firmness::ordinary, {});
    const auto weighed = [&](double share, bool insisted) {
        const double gauge = 240 / cloth.gauge.mid.si();
        swatch.mass = cloth.mass_per_area * (centimetres(15) * centimetres(15)) * (share * gauge);
        swatch.insisted = insisted;
        Evidence known;
        observe(swatch, plain(), yarn, known);
        return known;
    };
    const auto usual = weighed(1, false), little = weighed(0.5, false), sure = weighed(0.5, true);
    CHECK(usual.weighed.size() == 1);
    CHECK(usual.stands_on.back().weighed);
    CHECK(little.weighed.empty());
    CHECK_FALSE(little.stands_on.back().weighed);
    REQUIRE(little.questions.size() == 1);
    CHECK(little.questions[0].what == Seen::yarn_for_area);
    CHECK(little.gauge.has_value());
    CHECK(sure.weighed.size() == 1);
    CHECK(sure.questions.empty());
}
