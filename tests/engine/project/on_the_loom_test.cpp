#include "engine/project/on_the_loom.hpp"

#include <doctest/doctest.h>

#include "engine/project/constants.hpp"
#include "engine/project/plan.hpp"
#include "tests/engine/invented.hpp"
#include "tests/engine/project/fabrics.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

Equipment heddle_of(Sett count) {
    Equipment out;
    out.heddles = {count};
    return out;
}

Plan at_its_size(const Template& article, const YarnProfile& yarn, const Equipment& owned) {
    return plan(article, yarn, fabrics, owned, {0.9, article.ideal, {}, {}});
}

YarnProfile cotton(double metres_to_hand, double in_tex) {
    auto out = invented::yarn(metres_to_hand, in_tex);
    out.hair = 0;
    out.packed_diameter = packed_diameter(tex(in_tex), 0.92);
    return out;
}

}  // namespace

// Two towels of 38 x 68 cm, hems of 4 cm, cotton of 148 tex on a heddle of 50 to 10 cm. Squeezed
// it is 1 / (0.92 x sqrt(3352)) in = 0.477 mm. Width: 9.5 % drawn in, 7.5 % washed out, 0.8371
// kept: 45.39 cm, 226.97 ends, so 228; 45.60 cm in the heddle. Length: 5.6 % lost: 72.03 cm off
// the loom, 360.2 picks, so 362. Take-up 9/16 x (5 x 0.0477)^2 = 3.20 %.
// An end: 2 x (72.03 + 8) x 1.0320 + 50 = 215.2 cm; warp 228 x 2.152 = 490.6 m.
// Weft: 2 x (362 + 40) picks x 45.60 cm x 1.03 = 377.6 m. Together 868 m.
TEST_CASE("a pair of hemmed cotton towels, by hand") {
    auto towels = invented::article(Craft::woven, invented::piece("tabby", 38, 68, Grows::neither));
    towels.pieces[0].count = 2;
    towels.fringe = {};
    towels.hem = centimetres(4);
    const auto p = at_its_size(towels, cotton(2000, 148), heddle_of(ends_per_10cm(50)));
    const auto& piece = p.pieces[0];
    CHECK(piece.panel.ends == 228);
    CHECK(piece.panel.picks == 362);
    CHECK(in_centimetres(piece.panel.reed_width) == near(45.60, 1e-4));
    CHECK(in_centimetres(piece.panel.woven_length) == near(72.03, 1e-3));
    CHECK(in_metres(piece.warp) == near(490.6, 0.002));
    CHECK(in_metres(piece.weft) == near(377.6, 0.002));
    CHECK(in_metres(p.need.mid) == near(868, 0.002));
}

// A wool scarf of 24 x 165 cm, fringes of 12 cm, 222 tex woollen on a heddle of 40 to 10 cm:
// squeezed 0.640 mm. Width: 0.8009 kept, 29.97 cm, 119.9 ends, so 120: 30 cm in the heddle.
// Length: 10 % lost, 183.3 cm off the loom, 733.3 picks, so 734. Take-up 9/16 x (4 x 0.0640)^2 =
// 3.69 %. An end: 183.3 x 1.0369 + 50 = 240.1 cm, the fringes cut from the 50; warp 288.1 m. Weft
// 734 x 0.30 x 1.03 = 226.8 m.
TEST_CASE("a fringed wool scarf, by hand") {
    auto scarf = invented::article(Craft::woven, invented::piece("tabby", 24, 165, Grows::neither));
    scarf.fringe = centimetres(12);
    const auto p = at_its_size(scarf, invented::yarn(900, 222), heddle_of(ends_per_10cm(40)));
    const auto& piece = p.pieces[0];
    CHECK(piece.panel.ends == 120);
    CHECK(piece.panel.picks == 734);
    CHECK(in_centimetres(piece.panel.warp_per_end) == near(240.1, 0.001));
    CHECK(in_metres(piece.warp) == near(288.1, 0.001));
    CHECK(in_metres(piece.weft) == near(226.8, 0.001));
    CHECK(p.need.mid.si() == Approx((piece.warp + piece.weft).si()));
}

TEST_CASE("the weft is of the picks that are woven, whole repeats and all") {
    auto twill = invented::article(Craft::woven, invented::piece("twill", 20, 50, Grows::neither));
    const auto p = at_its_size(twill, invented::yarn(900, 222), {});
    const auto& panel = p.pieces[0].panel;
    CHECK(panel.picks % 4 == 0);
    CHECK(in_metres(p.pieces[0].weft) ==
          Approx(panel.picks * in_metres(panel.reed_width) * (1 + constants::weft_slack)));
}

TEST_CASE(
    "the person's loom waste and fringe are taken, a shaft loom wastes more than a heddle's") {
    const auto scarf =
        std::make_shared<const Template>(invented::woven_scarf());  // 50 cm, fringes of 10
    Equipment owned;
    CHECK(on_this_loom(scarf, owned) == scarf);  // shared, not copied
    CHECK(scarf->loom_waste == centimetres(50));
    owned.shafts = 4;
    CHECK(in_centimetres(on_this_loom(scarf, owned)->loom_waste) == Approx(70));
    owned.loom_waste = centimetres(30);
    owned.fringe = centimetres(5);
    const auto ours = on_this_loom(scarf, owned);
    CHECK(ours->loom_waste == centimetres(30));
    CHECK(ours->fringe == centimetres(5));
    CHECK(in_centimetres(waste_beyond_fringe(*ours)) == Approx(20));
    owned.loom_waste = centimetres(8);
    // No fringe is cut from what the knots and the rod hold.
    CHECK(in_centimetres(waste_beyond_fringe(*on_this_loom(scarf, owned))) == Approx(8));
    owned.fringe = centimetres(25), owned.loom_waste = centimetres(50);
    CHECK(in_centimetres(waste_beyond_fringe(*on_this_loom(scarf, owned))) == Approx(15));
    auto hemmed = *scarf;
    hemmed.fringe = {};
    CHECK(on_this_loom(std::make_shared<const Template>(hemmed), owned)->fringe.si() ==
          0);  // what has none gets none
}

// A square of 10 cm: on pins nothing is drawn in, 11.5 and 10 % are washed out. 11.30 cm wide with
// pins 8 to the inch (3.15 to the cm): 35.6 ends, so 36; 11.11 cm long, 35.0 picks, so 36. Warp 36
// x 11.11 cm x (1 + take-up), weft 36 x 11.43 cm x 1.03, and 20 cm of tails: 9 to 10 yards.
TEST_CASE("a square on pins, by hand: no loom waste, nothing drawn in at the edges") {
    auto square = invented::article(Craft::woven, invented::piece("tabby", 10, 10, Grows::both));
    square.loom = Loom::pins;
    square.spacing = Spacing::scarf;
    square.fringe = square.loom_waste = {};
    auto owned = heddle_of(ends_per_10cm(60));
    owned.sold_by = SoldBy::by_the_inch;
    const auto p = at_its_size(square, invented::yarn(900, 400), owned);
    const auto& piece = p.pieces[0];
    CHECK(in_ends_per_inch(piece.woven->heddle) == Approx(8));  // not the heddle that is owned
    CHECK(piece.panel.ends == 36);
    CHECK(piece.panel.picks == 36);
    const double bent = piece.woven->warp_take_up;
    CHECK(in_metres(p.need.mid) ==
          near(36 * 0.1111 * (1 + bent) + 36 * 0.1143 * 1.03 + 0.2, 0.002));
    CHECK(piece.woven->drawn_in.mid == 0);
}

TEST_CASE("weft decides the width that is lost, warp the length") {
    auto scarf = invented::woven_scarf();
    scarf.pieces[0].of_warp = 0;
    OtherYarn bought;
    bought.hair = 0;
    const auto cloth = weave_piece(scarf, scarf.pieces[0], fabrics.weaves[0],
                                   invented::yarn(900, 222), bought, {});
    CHECK(cloth.width.mid == Approx(width_loss(scarf.finish, 1).mid));
    CHECK(cloth.length.mid == Approx(length_loss(scarf.finish, 0).mid));
}
