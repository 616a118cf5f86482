#include "engine/project/role.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <stdexcept>

#include "engine/project/constants.hpp"
#include "engine/project/plan.hpp"
#include "engine/yarn/count.hpp"
#include "tests/engine/invented.hpp"
#include "tests/engine/project/fabrics.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;
using invented::yarn;

namespace {

const Equipment loom{.heddles = {ends_per_10cm(40)}, .loom_width = {}, .shafts = 2, .needles = {}};

Plan sized(const Template& article, const YarnProfile& yarn, Length size, OtherYarn other = {}) {
    return plan(article, yarn, fabrics, loom, {0.9, size, {}, std::move(other)});
}

}  // namespace

// By hand: 25 cm finished at 19.9 % loss are 31.21 cm in the heddle, at 40 ends to 10 cm 124.9:
// 126 ends; 180 cm at 10 % are 200 cm woven, at 40 picks to 10 cm 800 picks. The warp is 126 x
// (200 cm x (1 + take-up) + 50 cm), its fringes cut from the waste; the weft 800 x 31.5 cm x
// (1 + slack).
TEST_CASE("a scarf as weft on another warp, by hand: the warp is the other yarn's") {
    const auto yarn_of = yarn(500, 222);
    const auto alone = sized(invented::woven_scarf(), yarn_of, metres(1.8));
    const auto weft = sized(in_role(invented::woven_scarf(), Role::weft), yarn_of, metres(1.8));
    const auto& body = weft.pieces.front();
    const double bent = body.woven->warp_take_up;
    CHECK(in_metres(weft.second_yarn) == near(126 * (2.0 * (1 + bent) + 0.50), 0.002));
    CHECK(in_metres(weft.need.mid) == near(800 * 0.315 * (1 + constants::weft_slack), 0.002));
    CHECK((weft.need.mid + weft.second_yarn).si() == Approx(alone.need.mid.si()));
    CHECK(weft.second_to_have > weft.second_yarn);
    CHECK(alone.second_yarn.si() == 0);
}

// By hand: two mats of 30 x 40 cm, no fringe: 37.46 cm in the heddle, 150 ends; 44.44 cm woven,
// 178 picks each.
TEST_CASE("mats as weft on another warp, by hand") {
    auto mats = invented::article(Craft::woven, invented::piece("tabby", 30, 40, Grows::neither));
    mats.pieces.front().count = 2;
    mats.fringe = {};
    const auto plan = sized(in_role(mats, Role::weft), yarn(500, 222), metres(1.8));
    const auto& body = plan.pieces.front();
    const double bent = body.woven->warp_take_up;
    CHECK(body.panel.ends == 150);  // whole repeats of two
    CHECK(in_metres(plan.need.mid) == near(2 * 178 * 0.375 * (1 + constants::weft_slack), 0.01));
    CHECK(in_metres(plan.second_yarn) == near(150 * (2 * 0.4444 * (1 + bent) + 0.50), 0.005));
}

TEST_CASE("warp under another weft is the rest of it, half of each is half") {
    const auto batch = yarn(500, 222);
    const auto article = invented::woven_scarf();
    const auto alone = sized(article, batch, metres(1.8));
    const auto warp = sized(in_role(article, Role::warp), batch, metres(1.8));
    const auto weft = sized(in_role(article, Role::weft), batch, metres(1.8));
    const auto half = sized(in_role(article, Role::colour), batch, metres(1.8));
    CHECK(warp.need.mid.si() == Approx(weft.second_yarn.si()));
    CHECK(warp.second_yarn.si() == Approx(weft.need.mid.si()));
    CHECK(half.need.mid.si() == Approx(alone.need.mid.si() / 2));
    CHECK(half.second_yarn.si() == Approx(alone.need.mid.si() / 2));
}

// 8/2 cotton: 590.54 / 8 x 2 = 147.6 tex. A repeat of plain weave is two of each yarn wide, so the
// greatest sett is 1 / (d warp + d weft): 1 / (0.545 + 0.640) mm for these two.
TEST_CASE("what is left to the other yarn is the rest, and the rest of that is the first again") {
    const auto yarn_of = yarn(2000, 222);
    for (const auto role : {Role::weft, Role::warp, Role::colour}) {
        const auto ours = in_role(invented::woven_scarf(), role);
        const auto theirs = rest_of(ours);
        const auto first = sized(ours, yarn_of, metres(1.8));
        const auto second = sized(theirs, yarn_of, metres(1.8));
        CHECK(first.need.mid.si() == Approx(second.second_yarn.si()));
        CHECK(first.second_yarn.si() == Approx(second.need.mid.si()));
        CHECK(sized(rest_of(theirs), yarn_of, metres(1.8)).need.mid.si() ==
              Approx(first.need.mid.si()));
        CHECK(takes_two(ours));
    }
    CHECK_FALSE(takes_two(invented::woven_scarf()));
}

TEST_CASE("an article of two yarns is shared as it says, not halved once more") {
    auto striped = invented::woven_scarf();
    striped.pieces.push_back(striped.pieces.front());
    striped.pieces.back().yarn = 2;
    const auto plain = sized(striped, yarn(2000, 222), metres(1.8));
    const auto colour = sized(in_role(striped, Role::colour), yarn(2000, 222), metres(1.8));
    CHECK(colour.need.mid.si() == Approx(plain.need.mid.si()));
}

TEST_CASE("a finer warp stands closer, by Ashenhurst's rule for two yarns") {
    const auto batch = yarn(500, 222);
    const auto grist = linear_density_of(8, count_system("cotton count")) * 2.0;
    CHECK(in_tex(grist) == near(147.6, 0.001));
    const OtherYarn cotton{"8/2 cotton", grist, packed_diameter(grist, 0.90), {}, {}};
    const auto article = in_role(invented::woven_scarf(), Role::weft);
    const auto plan = sized(article, batch, metres(1.8), cotton);
    const double both = in_millimetres(cotton.packed_diameter + batch.packed_diameter);
    CHECK(in_ends_per_10cm(plan.pieces[0].woven->greatest) == near(100 / both, 1e-6));
    CHECK(in_grams(plan.pieces[0].mass) == near(in_grams(plan.need.mid * tex(222)), 1e-6));
}

TEST_CASE("a border is what is not the largest piece, made in one, there is none") {
    auto edged = invented::knitted_scarf();
    edged.pieces.push_back(invented::piece("lace", 40, 30, Grows::neither));
    edged.pieces.back().name = "end";
    const auto alone = sized(edged, yarn(900, 222), metres(1.8));
    const auto border = sized(in_role(edged, Role::border), yarn(900, 222), metres(1.8));
    CHECK(border.need.mid.si() == Approx(alone.pieces[1].metres.mid.si()));
    CHECK(border.second_yarn.si() == Approx(alone.pieces[0].metres.mid.si()));
    CHECK_THROWS_AS(in_role(invented::knitted_scarf(), Role::border), std::invalid_argument);
    CHECK_THROWS_AS(in_role(invented::knitted_scarf(), Role::weft), std::invalid_argument);
}

// By hand: 400 m of 100 g held double are 200 m of 500 tex; 14 wraps become 14 / 1.414 = 9.9.
TEST_CASE("held double: half the metres, twice the grist, wraps by the root of two") {
    Batch batch;
    batch.skeins = {{"one", metres(400), grams(100), LengthState::washed}};
    batch.wraps = WrapsReading{wraps_per_inch(14), inches(1), WrapsHow::laid};
    batch.plies = 2;
    batch.washed_gauge = stitches_per_10cm(28);
    const auto doubled = two_strands(batch, Role::doubled);
    CHECK(in_metres(doubled.skeins[0].length) == Approx(200));
    CHECK(in_tex(doubled.skeins[0].mass / doubled.skeins[0].length) == Approx(500));
    CHECK(in_wraps_per_inch(doubled.wraps->count) == near(9.90, 0.001));
    CHECK(doubled.plies == 2);
    CHECK_FALSE(doubled.washed_gauge);
    const auto plied = two_strands(batch, Role::plied_again);
    CHECK(in_metres(plied.skeins[0].length) == Approx(200 * (1 - constants::plying_takes_up)));
    CHECK(plied.plies == 4);
}

// The gauge follows the grist: twice the grist at one tightness is a loop longer by the root of
// two, 28 stitches become 19.8, and a cloth of that takes the root of two fewer metres.
TEST_CASE("two articles held double, by hand: the gauge follows the grist") {
    const auto one = yarn(800, 200), two = yarn(400, 400);
    for (const auto& article :
         {invented::knitted_scarf(),
          invented::article(Craft::knitted, invented::piece("plain", 60, 90, Grows::neither))}) {
        const auto single = sized(article, one, metres(1.8));
        const auto doubled = sized(article, two, metres(1.8));
        CHECK(doubled.pieces[0].knit->gauge.mid.si() * std::sqrt(2.0) ==
              near(single.pieces[0].knit->gauge.mid.si(), 0.03));
        CHECK(doubled.need.mid.si() * std::sqrt(2.0) == near(single.need.mid.si(), 0.05));
    }
}

TEST_CASE("a part is named by its word and as it is spelled out") {
    for (const auto role : {Role::whole, Role::weft, Role::warp, Role::border, Role::colour,
                            Role::doubled, Role::plied_again}) {
        CHECK(role_named(name_of(role)) == role);
        CHECK(role_named(words(role)) == role);
    }
    CHECK(role_named("one of two colours") == Role::colour);
    CHECK(role_named("plied again") == Role::plied_again);
    CHECK_FALSE(role_named("selvedge"));
    CHECK_FALSE(role_named(""));
}
