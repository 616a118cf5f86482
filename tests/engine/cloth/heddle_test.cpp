#include "engine/cloth/heddle.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "engine/cloth/spacing_words.hpp"
#include "engine/cloth/weaving_constants.hpp"
#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;
using invented::yarn;

namespace {

Weave tabby() { return {}; }

Weave twill() {
    Weave out;
    out.interlacing = twill_2_2;
    out.shafts = 4;
    return out;
}

Equipment with(Heddle heddle, int shafts = 2) {
    Equipment out;
    out.heddles = {heddle};
    out.shafts = shafts;
    return out;
}

WovenCloth scarf(const YarnProfile& yarn, const Weave& weave, const Equipment& owned) {
    return weave_cloth(yarn, weave, {Spacing::scarf, Finish::light}, owned);
}

}  // namespace

TEST_CASE("a heddle keeps the name it is sold by, whichever trade sold it") {
    CHECK(heddle_name(ends_per_inch(12.5)) == "12.5 epi");
    CHECK(heddle_name(ends_per_inch(10)) == "10 epi");
    CHECK(heddle_name(ends_per_10cm(50)) == "50/10 cm");  // not a heddle of 12.7
    CHECK(heddle_name(ends_per_10cm(45)) == "45/10 cm");
}

TEST_CASE("who thinks in inches is offered heddles by the inch, the others metric ones") {
    Equipment inches_wanted;
    inches_wanted.sold_by = SoldBy::by_the_inch;
    for (const double grist : {80.0, 150.0, 222.0, 400.0, 800.0}) {
        const auto metric = scarf(yarn(400, grist), tabby(), {});
        const auto imperial = scarf(yarn(400, grist), tabby(), inches_wanted);
        CAPTURE(grist);
        CHECK(heddle_name(metric.heddle).find("/10 cm") != std::string::npos);
        CHECK(heddle_name(imperial.heddle).find(" epi") != std::string::npos);
    }
}

// By hand: 500 tex has a squeezed diameter of 0.96 mm; a heddle of 40 to 10 cm has ends 2.5 mm
// apart, and 0.45 of that, 1.13 mm, is taken for its hole. Measured at 0.9 mm it is too narrow.
TEST_CASE("a hole is the heddle's own, not the sett's, and a reed has none") {
    const auto thick = yarn(400, 500);
    CHECK(in_millimetres(thick.packed_diameter) == near(0.96, 0.01));
    CHECK(scarf(thick, tabby(), with(ends_per_10cm(40))).through_hole);
    CHECK_FALSE(scarf(thick, tabby(), with({ends_per_10cm(40), millimetres(0.9)})).through_hole);
    CHECK(in_millimetres(hole_of(ends_per_10cm(40))) == Approx(10 * constants::hole_share / 4));
    const auto reeded = scarf(thick, twill(), with({ends_per_10cm(40), millimetres(0.9)}, 4));
    CHECK(reeded.through_hole);
    CHECK(reeded.hole.si() == 0);
    CHECK(spaced_in(reeded) == "reed");
}

TEST_CASE("a firm cloth in one heddle is no warning: at every share wanted the yarn passes") {
    for (double grist = 60; grist < 1200; grist *= 1.1) {
        const auto firm = weave_cloth(yarn(400, grist), {}, {Spacing::firm, Finish::light}, {});
        CAPTURE(grist);
        if (firm.share <= 0.85) CHECK(firm.through_hole);
    }
}

TEST_CASE("a reed is sleyed two or three to a dent, and the words say so") {
    const auto y = yarn(400, 100);  // general twill wants about 110 to 10 cm
    const auto cloth =
        weave_cloth(y, twill(), {Spacing::general, Finish::light}, with(ends_per_10cm(60), 4));
    CHECK(cloth.sleying.ends() == 2);
    CHECK(spacing_words(cloth) == "60/10 cm reed (two ends to a dent)");
    const auto on_four = scarf(yarn(400, 222), tabby(), with(ends_per_10cm(25), 4));
    CHECK(spacing_words(on_four) ==
          "25/10 cm reed (two ends to a dent)");  // plain, on a shaft loom
}

// A 10-dent reed sleyed 1-2 gives 15 to the inch, one of 12 sleyed 1-1-2 gives 16.
TEST_CASE("a reed that is owned is sleyed in any of the usual orders") {
    static_assert(Sleying{"1-1-2"}.ends() == 4 && Sleying{"1-1-2"}.dents() == 3);
    static_assert(Sleying{"2-3"}.most() == 3 && Sleying{"0-1"}.to_a_dent() == 0.5);
    struct Case {
        double dents, wanted;
        const char* order;
    };
    for (const auto& c : {Case{10, 15, "1-2"}, Case{12, 16, "1-1-2"}, Case{12, 20, "1-2-2"},
                          Case{8, 20, "2-3"}, Case{15, 7.5, "0-1"}, Case{12, 24, "2"}}) {
        WovenCloth twilled;
        auto y = yarn(900, 222);
        // A packed diameter whose general twill, 77.5 % of two thirds, is the sett wanted.
        y.packed_diameter = inches(0.775 * 2 / 3 / c.wanted);
        twilled = weave_cloth(y, twill(), {Spacing::general, Finish::light},
                              with(ends_per_inch(c.dents), 4));
        CAPTURE(c.order);
        CHECK(twilled.sleying.order == c.order);
        CHECK(in_ends_per_inch(twilled.ends) == Approx(c.wanted));
        CHECK(twilled.within_reach);
    }
    const auto bulky = scarf(yarn(900, 900), twill(), with(ends_per_inch(12), 4));
    CHECK(spacing_words(bulky) == "12 epi reed (one end in every other dent)");
}

TEST_CASE("a reed is spoken of by its order only where that is uneven, not said, none is") {
    const auto y = yarn(400, 100);
    for (double sold = 60; sold < 700; sold *= 1.1)
        CHECK(scarf(yarn(400, sold), twill(), {}).sleying.even());
    auto cloth = scarf(y, twill(), with(ends_per_inch(10), 4));
    cloth.sleying = {"1-2"};
    CHECK(spacing_words(cloth) == "10 epi reed (sleyed 1-2)");
}

TEST_CASE("a sett that is wanted is woven, in what there is where that gives it") {
    auto owned = with(ends_per_inch(10), 4);
    owned.sett = ends_per_inch(15);
    const auto twice = scarf(yarn(900, 222), twill(), owned);
    CHECK(spacing_words(twice) == "10 epi reed (sleyed 1-2)");
    owned.sett = ends_per_inch(8);
    const auto open = scarf(yarn(900, 222), twill(), owned);
    CHECK(in_ends_per_inch(open.ends) == Approx(8));
    CHECK(spacing_words(open) == "8 epi reed");
    CHECK(open.within_reach);
    CHECK(open.picks == open.ends);
}

TEST_CASE("ends that share a hole of a rigid heddle work as one, and that is said") {
    Weave basket;
    basket.interlacing = {4, 2};
    basket.most_in_hole = 2;
    const auto cloth = scarf(yarn(400, 120), basket, with(ends_per_10cm(40)));
    CHECK(spacing_words(cloth) == "40/10 cm heddle (two ends in each hole and slot, as one)");
}

// By hand: 80 tex, C 0.84: 66 diameters to the inch, greatest plain sett 33 epi; 65 % is 21.5.
TEST_CASE("laceweight takes two heddles together where one is too coarse") {
    const auto cloth = scarf(yarn(900, 80), tabby(), with(ends_per_inch(10)));
    CHECK(cloth.heddles_together == 2);
    CHECK(in_ends_per_inch(cloth.ends) == Approx(20));
    CHECK(spacing_words(cloth) == "two 10 epi heddles (one behind the other)");
    CHECK(scarf(yarn(900, 222), tabby(), with(ends_per_inch(12))).heddles_together == 1);
}
