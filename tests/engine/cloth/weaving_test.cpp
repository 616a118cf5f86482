#include "engine/cloth/weaving.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/engine/invented.hpp"

using namespace gristwright;
using doctest::Approx;
using invented::yarn;

namespace {

Weave weave(Interlacing interlacing = plain_weave, int shafts = 2) {
    Weave out;
    out.interlacing = interlacing;
    out.shafts = shafts;
    return out;
}

WovenCloth woven(const YarnProfile& yarn, const Weave& weave, const Equipment& owned = {},
                 Spacing purpose = Spacing::scarf) {
    return weave_cloth(yarn, weave, {purpose, Finish::light}, owned);
}

const std::vector<Heddle> three{ends_per_10cm(30), ends_per_10cm(40), ends_per_10cm(60)};

}  // namespace

TEST_CASE("of the heddles owned the one is chosen whose share lies nearest the band's middle") {
    for (const double grist : {80.0, 150.0, 300.0, 700.0}) {
        const auto plain = weave();
        const auto cloth = woven(yarn(400, grist), plain, {three, {}, 2, {}});
        const double middle = (cloth.wanted.low + cloth.wanted.high) / 2;
        INFO(grist, " tex: ", in_ends_per_10cm(cloth.heddle));
        CHECK(cloth.share == Approx(cloth.ends / cloth.greatest));
        for (const auto other : three)
            CHECK(std::abs(cloth.share - middle) <=
                  std::abs(other.count / cloth.greatest - middle));
    }
}

TEST_CASE("a heddle far off the band is used and said to be out of reach") {
    const auto plain = weave();
    const auto far = woven(yarn(400, 60), plain, {{ends_per_10cm(20)}, {}, 2, {}});
    CHECK(in_ends_per_10cm(far.heddle) == Approx(20));
    CHECK_FALSE(far.within_reach);
    CHECK(woven(yarn(400, 180), plain).within_reach);
}

TEST_CASE("ends may share a hole only where the weave allows it") {
    auto basket = weave({4, 2}), plain = weave();
    basket.most_in_hole = 2;
    const Equipment wide{{ends_per_10cm(20), ends_per_10cm(30)}, {}, 2, {}};
    const auto doubled = woven(yarn(400, 120), basket, wide);
    CHECK(doubled.sleying.ends() == 2);
    CHECK(doubled.ends == doubled.heddle * 2);
    CHECK(woven(yarn(400, 120), plain, wide).sleying.ends() == 1);
}

TEST_CASE("take-up is Peirce's at the sett chosen, less in a weave that crosses less") {
    const auto plain = weave();
    auto twill = weave(twill_2_2, 4);
    twill.take_up = 0.5;
    const Equipment one{{ends_per_10cm(80)}, {}, 4, {}};
    const auto y = yarn(400, 150);
    const auto cloth = woven(y, plain, one);
    CHECK(cloth.warp_take_up == Approx(take_up(ends_per_10cm(80), y.packed_diameter)));
    CHECK(cloth.picks == cloth.ends);
    CHECK(woven(y, twill, one).warp_take_up == Approx(cloth.warp_take_up / 2));
    CHECK(woven(yarn(400, 1500), plain, one).warp_take_up <= 0.25);
}

TEST_CASE(
    "2/2 twill lies closer than plain and wants four shafts, loom not said rules nothing out") {
    const auto plain = weave(), twill = weave(twill_2_2, 4);
    const auto y = yarn(400, 150);
    CHECK(woven(y, twill).greatest / woven(y, plain).greatest == Approx(4.0 / 3));
    CHECK_FALSE(woven(y, twill, {{}, {}, 2, {}}).shafts_enough);
    CHECK(woven(y, twill, {{}, {}, 4, {}}).shafts_enough);
    CHECK(woven(y, twill).shafts_enough);
    CHECK(woven(y, plain, {{}, {}, 2, {}}).shafts_enough);
}

TEST_CASE("a yarn too thick for the hole is told, and a wider heddle lets it through") {
    const auto plain = weave();
    CHECK_FALSE(woven(yarn(400, 2000), plain, {{ends_per_10cm(60)}, {}, 2, {}}).through_hole);
    CHECK(woven(yarn(400, 2000), plain, {{ends_per_10cm(20)}, {}, 2, {}}).through_hole);
}

TEST_CASE("the losses are those of the finish, and a firmer purpose wants a larger share") {
    const auto plain = weave();
    const auto y = yarn(400, 150);
    for (const auto finish : {Finish::light, Finish::open_or_fulled, Finish::hard_fulled}) {
        const auto cloth = weave_cloth(y, plain, {Spacing::open, finish}, {});
        CHECK(cloth.width.mid == width_loss(finish, 1).mid);
        CHECK(cloth.length.mid == length_loss(finish, 1).mid);
    }
    CHECK(woven(y, plain, {}, Spacing::open).share < woven(y, plain, {}, Spacing::firm).share);
}

// Cotton off the loom loses 7.5 % of its width and 5.6 of its length; a weave that gathers 15 %
// keeps 0.85 of what those leave, both ways.
TEST_CASE("a weave that gathers draws up beside what its fibre loses") {
    auto waffle = weave({6, 4.33}, 4);
    auto cotton = yarn(900, 222);
    cotton.hair = 0;
    const auto flat = woven(cotton, waffle);
    waffle.gathers = {0.15, 0.08, 0.22};
    const auto drawn_up = woven(cotton, waffle);
    CHECK(1 - drawn_up.length.mid == Approx(0.85 * (1 - flat.length.mid)));
    CHECK(1 - drawn_up.width.mid == Approx(0.85 * (1 - flat.width.mid)));
    CHECK(drawn_up.length.high > drawn_up.length.mid);
    CHECK(drawn_up.length.low > flat.length.low);
    CHECK(drawn_up.spread > flat.spread);
}

// Twice the plain sett, and as close as general cloth is: 0.775 x D, whatever heddles there are.
TEST_CASE("a warp-faced band draws itself in: no heddle of the loom's decides its sett") {
    Weave band;
    band.sett = 2;
    band.picks = 0.35;
    YarnProfile yarn;
    yarn.packed_diameter = millimetres(0.5);
    const Equipment owned{
        .heddles = {ends_per_10cm(20)}, .loom_width = {}, .shafts = 2, .needles = {}};
    const auto cloth = weave_cloth(yarn, band, {Spacing::general, Finish::light}, owned);
    CHECK(in_ends_per_10cm(cloth.ends) == doctest::Approx(0.775 * 200));
    CHECK(in_ends_per_10cm(cloth.picks) == doctest::Approx(0.35 * 0.775 * 200));
    CHECK(cloth.within_reach);
    CHECK(cloth.through_hole);
    CHECK(greatest_sett(Weave{}, yarn.packed_diameter) ==
          greatest_sett(yarn.packed_diameter, plain_weave));
}
