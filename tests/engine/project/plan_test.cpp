#include "engine/project/plan.hpp"

#include "engine/project/on_the_loom.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <stdexcept>

#include "engine/project/constants.hpp"
#include "tests/engine/invented.hpp"
#include "tests/engine/project/fabrics.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;
using invented::yarn;

namespace {

Plan planned(const Template& article, const YarnProfile& yarn, const Equipment& owned = {},
             const Request& request = {}) {
    return plan(article, yarn, fabrics, owned, request);
}

Plan planned_at(const Template& article, const YarnProfile& yarn, Length size) {
    return planned(article, yarn, {}, {0.9, size, {}});
}

bool has(const Plan& plan, Obstacle what) {
    return std::find(plan.obstacles.begin(), plan.obstacles.end(), what) != plan.obstacles.end();
}

// One of each way of growing, knitted and woven, with and without long repeats.
std::vector<Template> articles() {
    using invented::article, invented::piece;
    auto shawl = article(Craft::knitted, piece("lace", 180, 0, Grows::both));
    shawl.pieces[0].outline.shape = Shape::triangle;
    auto edged = invented::knitted_scarf();
    edged.pieces.push_back(piece("lace", 40, 30, Grows::neither));
    return {invented::knitted_scarf(),
            invented::woven_scarf(),
            shawl,
            edged,
            article(Craft::knitted, piece("lace", 60, 180, Grows::both)),
            article(Craft::woven, piece("twill", 60, 180, Grows::both))};
}

}  // namespace

TEST_CASE("the largest size is where the certainty crosses what was asked") {
    std::mt19937 random{7};
    std::uniform_real_distribution<double> hand(60, 900), grist(80, 400), asked(0.5, 0.999);
    int crossed = 0;
    for (const auto& article : articles())
        for (int i = 0; i < 60; ++i) {
            const double metres_to_hand = hand(random), in_tex = grist(random);
            const auto batch = yarn(metres_to_hand, in_tex);
            const auto p = planned(article, batch, {}, {asked(random), {}, {}});
            if (p.reach == Reach::short_of) continue;
            INFO(article.pieces[0].fabric, " ", in_centimetres(p.size), " cm at ", p.asked);
            CHECK(p.certainty >= p.asked);
            if (p.size > article.largest - centimetres(1.5)) continue;
            const auto larger = p.size + centimetres(1);
            const auto next = plan(article, batch, fabrics, {}, {p.asked, larger, {}});
            CHECK(std::min(p.certainty_at(larger), next.certainty) < p.asked);
            ++crossed;
        }
    CHECK(crossed > 100);
}

TEST_CASE("the certainty of a plan equals a Monte Carlo within 1 %") {
    const auto scarf = invented::knitted_scarf();
    const auto needed = in_metres(planned_at(scarf, yarn(100, 220), metres(1.8)).need.mid);
    std::mt19937 random{20261125};
    std::normal_distribution<double> normal;
    for (const double there : {0.85, 1.0, 1.2}) {
        const auto p = planned_at(scarf, yarn(there * needed, 220, 0.05), metres(1.8));
        const int trials = 100'000;
        int enough = 0;
        for (int i = 0; i < trials; ++i)
            enough +=
                std::exp(p.need.spread * normal(random)) <= there * std::exp(0.05 * normal(random));
        CHECK(std::abs(p.certainty - enough / double(trials)) < 0.01);
        // The curve knows nothing of whole repeats.
        CHECK(std::abs(p.certainty_at(metres(1.8)) - p.certainty) < 0.03);
    }
}

TEST_CASE("more metres never make a smaller plan, more certainty never a larger one") {
    for (const auto& article : articles()) {
        Length before;
        for (int hand = 40; hand < 1500; hand += 13) {
            const auto p = planned(article, yarn(hand, 200));
            CHECK(p.size >= before - millimetres(0.001));
            before = p.size;
        }
        for (const double asked : {0.5, 0.7, 0.9, 0.99, 0.999}) {
            const auto size = planned(article, yarn(400, 200), {}, {asked, {}, {}}).size;
            CHECK(size <= before + millimetres(0.001));
            before = size;
        }
    }
}

TEST_CASE("metres kept back are metres not there") {
    const auto kept =
        planned(invented::knitted_scarf(), yarn(400, 200), {}, {0.9, {}, metres(150)});
    const auto fewer = planned(invented::knitted_scarf(), yarn(250, 200));
    CHECK(kept.size == fewer.size);
    CHECK(in_metres(kept.have.mid) == Approx(250));
    const auto all_kept =
        planned(invented::knitted_scarf(), yarn(100, 200), {}, {0.9, {}, metres(150)});
    CHECK(all_kept.have.mid == Length{});
    CHECK(all_kept.certainty == 0);
}

TEST_CASE("a tiny batch is short by so many metres, and with those it fits exactly") {
    // Found a bug: the metres said were to add to what is sure, not to what lies in the basket, so
    // a person who spun exactly that much more was still told that it would not do.
    for (const auto& article : articles()) {
        const auto p = planned(article, yarn(15, 200, 0.05));
        REQUIRE(p.reach == Reach::short_of);
        CHECK(p.size == article.smallest);
        CHECK(p.short_by > Length{});
        const double enough = 15 + in_metres(p.short_by);
        CHECK(planned(article, yarn(enough + 0.01, 200, 0.05)).reach != Reach::short_of);
        CHECK(planned(article, yarn(enough - 0.01, 200, 0.05)).reach == Reach::short_of);
    }
}

TEST_CASE("everything twice as large, of a yarn of twice the width, takes twice the metres") {
    auto twice = [](Template article) {
        for (auto* l : {&article.smallest, &article.ideal, &article.largest, &article.fringe,
                        &article.loom_waste})
            *l = *l * 2;
        for (auto& piece : article.pieces)
            piece.outline.width = piece.outline.width * 2,
            piece.outline.length = piece.outline.length * 2;
        return article;
    };
    const auto scarf = invented::knitted_scarf();
    auto thin = yarn(500, 100), thick = yarn(500, 400);
    thin.washed_gauge = stitches_per_10cm(40), thick.washed_gauge = stitches_per_10cm(20);
    const auto small = planned_at(scarf, thin, metres(1.5));
    const auto scarf_twice = twice(scarf);
    const auto large = planned_at(scarf_twice, thick, metres(3));
    CHECK(large.pieces[0].stitches == small.pieces[0].stitches);
    CHECK(large.pieces[0].rows == small.pieces[0].rows);
    CHECK(large.by_size.linear == Approx(2 * small.by_size.linear));
    CHECK(large.by_size.fixed == Approx(small.by_size.fixed));  // tails are as long on any yarn
    CHECK(large.by_size.fixed == near(0.4, 1e-9));  // of one piece; our own figure: judgement

    const auto woven = invented::woven_scarf();
    const auto woven_twice = twice(woven);
    const Equipment fine{{ends_per_10cm(60)}, {}, 2, {}}, coarse{{ends_per_10cm(30)}, {}, 2, {}};
    const auto narrow = plan(woven, yarn(500, 100), fabrics, fine, {0.9, metres(1.5), {}});
    const auto broad = plan(woven_twice, yarn(500, 400), fabrics, coarse, {0.9, metres(3), {}});
    CHECK(broad.pieces[0].panel.ends == narrow.pieces[0].panel.ends);
    CHECK(in_metres(broad.need.mid) == Approx(2 * in_metres(narrow.need.mid)));
}

TEST_CASE("the quadratic says what the realised pieces need, but for whole repeats") {
    for (const auto& article : articles())
        for (const double cm : {60.0, 111.0, 180.0, 250.0}) {
            const auto p = planned_at(article, yarn(500, 120), centimetres(cm));
            INFO(article.pieces[0].fabric, " ", cm);
            const double smooth = p.by_size.at(centimetres(cm) / article.ideal);
            CHECK(in_metres(p.need.mid) == near(smooth, cm < 100 ? 0.12 : 0.06));
        }
}

TEST_CASE("a quadratic's largest size gives back the metres asked of it") {
    std::mt19937 random{3};
    std::uniform_real_distribution<double> part(0, 100);
    for (int i = 0; i < 200; ++i) {
        const Need need{part(random), part(random), part(random)};
        const double s = part(random) / 50;
        CHECK(need.largest(need.at(s), 10) == Approx(s));
    }
    CHECK(Need{10, 5, 0}.largest(20, 10) == Approx(2));
    CHECK(Need{10, 0, 0}.largest(9, 10) == 0);  // not even the fixed part
    CHECK(Need{10, 0, 0}.largest(11, 3) == 3);
    CHECK(Need{0, 0, 1}.largest(1e6, 3) == 3);
}

TEST_CASE("no warp is wider than the loom") {
    // Found a bug: whole repeats of ends are rounded up, which could pass the loom by a few ends.
    for (double loom = 20; loom < 60; loom += 0.7)
        for (const auto& article : {articles()[1], articles()[5]}) {
            const auto p = planned(article, yarn(5000, 150), {{}, centimetres(loom), 4, {}});
            INFO(article.pieces[0].fabric, " on ", loom, " cm");
            if (!has(p, Obstacle::loom_too_narrow))
                CHECK(in_centimetres(p.pieces[0].panel.reed_width) <= loom + 1e-9);
        }
    const auto narrow =
        planned(invented::woven_scarf(), yarn(900, 150), {{}, centimetres(15), 2, {}});
    CHECK(has(narrow, Obstacle::loom_too_narrow));
    CHECK(stops(Obstacle::loom_too_narrow));
}

TEST_CASE("2/2 twill is refused on a loom with one heddle, and only there") {
    const auto twill = articles()[5];
    CHECK(has(planned(twill, yarn(900, 150), {{}, {}, 2, {}}), Obstacle::needs_shafts));
    CHECK(stops(Obstacle::needs_shafts));
    CHECK_FALSE(has(planned(twill, yarn(900, 150), {{}, {}, 4, {}}), Obstacle::needs_shafts));
    CHECK_FALSE(has(planned(twill, yarn(900, 150)), Obstacle::needs_shafts));  // loom not said
    CHECK_FALSE(has(planned(invented::woven_scarf(), yarn(900, 150), {{}, {}, 2, {}}),
                    Obstacle::needs_shafts));
}

TEST_CASE("a needle and a heddle can be borrowed, and the plan says that they must be") {
    const auto hooks =
        planned(invented::knitted_scarf(), yarn(400, 220), {{}, {}, 0, {millimetres(12)}});
    CHECK(has(hooks, Obstacle::finer_than_needles));
    const auto wires =
        planned(invented::knitted_scarf(), yarn(400, 220), {{}, {}, 0, {millimetres(2)}});
    CHECK(has(wires, Obstacle::no_needle_fits));
    const auto coarse =
        planned(invented::woven_scarf(), yarn(400, 60), {{ends_per_10cm(20)}, {}, 2, {}});
    CHECK(has(coarse, Obstacle::no_heddle_fits));
    const auto thick =
        planned(invented::woven_scarf(), yarn(400, 2000), {{ends_per_10cm(60)}, {}, 2, {}});
    CHECK(has(thick, Obstacle::too_thick));
    for (const auto borrowed :
         {Obstacle::no_needle_fits, Obstacle::no_heddle_fits, Obstacle::too_thick})
        CHECK_FALSE(stops(borrowed));
}

TEST_CASE("a needle finer than any that is had is said to be so") {
    auto socks = invented::knitted_scarf();
    socks.firmness = Firmness::sock;
    const auto thread = planned(socks, yarn(4000, 30), {{}, {}, 0, {millimetres(2)}});
    CHECK(has(thread, Obstacle::finer_than_needles));
    CHECK_FALSE(has(thread, Obstacle::no_needle_fits));
    CHECK_FALSE(stops(Obstacle::finer_than_needles));
}

TEST_CASE("a cap that grows one way only needs what its area says at every size") {
    for (const auto grows : {Grows::neither, Grows::width, Grows::length, Grows::both}) {
        auto hat = invented::article(Craft::knitted, invented::piece("lace", 50, 25, grows));
        hat.pieces[0].outline.shape = Shape::cap;
        const auto p = planned(hat, yarn(900, 220));
        const bool wide = grows == Grows::width || grows == Grows::both;
        const bool along = grows == Grows::length || grows == Grows::both;
        for (const double s : {0.7, 1.0, 1.3}) {
            auto outline = hat.pieces[0].outline;
            outline.width = outline.width * (wide ? s : 1);
            outline.length = outline.length * (along ? s : 1);
            const auto cloth = p.pieces[0].knit->metres_per_area.mid * area(outline);
            CAPTURE(s);
            CHECK(p.by_size.at(s) == Approx(in_metres(cloth) + constants::joins_and_tails));
        }
    }
}

TEST_CASE("panels alike share one warp: its waste is paid once") {
    auto two = invented::woven_scarf();
    two.pieces[0].count = 2;
    const auto scarf = invented::woven_scarf();
    const auto one = planned_at(scarf, yarn(900, 150), metres(1.8));
    const auto both = planned_at(two, yarn(900, 150), metres(1.8));
    CHECK(both.pieces[0].panel.ends == one.pieces[0].panel.ends);
    const Length saved = one.need.mid * 2 - both.need.mid;
    CHECK(in_metres(saved) ==
          Approx(one.pieces[0].panel.ends * in_metres(waste_beyond_fringe(scarf))));
    CHECK(2 * one.by_size.at(1) - both.by_size.at(1) ==
          near(in_metres(saved), 0.02));  // ends not yet whole
}

TEST_CASE("a second yarn is not drawn from the batch") {
    auto striped = invented::knitted_scarf();
    striped.pieces.push_back(invented::piece("plain", 20, 60, Grows::length));
    striped.pieces.back().yarn = 2;
    const auto alone = planned(invented::knitted_scarf(), yarn(300, 200));
    const auto with = planned(striped, yarn(300, 200));
    CHECK(with.size == alone.size);
    CHECK(with.need.mid == alone.need.mid);
    CHECK(with.mass == alone.mass);
    CHECK(alone.second_yarn == Length{});
    CHECK(in_metres(with.second_yarn) == Approx(in_metres(with.pieces[1].metres.mid)));
}

TEST_CASE("whole repeats, always at least one, never a flat piece smaller than asked") {
    for (const auto& article : articles())
        for (int hand = 30; hand < 900; hand += 29) {
            const auto p = planned(article, yarn(hand, 170));
            for (const auto& made : p.pieces) {
                if (made.knit) {
                    const auto& fabric = *made.knit->fabric;
                    CHECK(made.stitches >= fabric.stitch_repeat);
                    CHECK((made.stitches - made.edge_stitches) % fabric.stitch_repeat == 0);
                    CHECK(made.rows % fabric.row_repeat == 0);
                    const double grown = p.size / article.ideal;
                    if (made.piece->grows == Grows::length)
                        CHECK(made.outline.length >=
                              made.piece->outline.length * grown - millimetres(0.01));
                } else {
                    CHECK(made.panel.ends % made.woven->weave->end_repeat == 0);
                    CHECK(made.panel.picks % made.woven->weave->pick_repeat == 0);
                }
            }
        }
}

TEST_CASE("a washed swatch narrows the margin and lets the plan grow") {
    const auto before = planned(invented::knitted_scarf(), yarn(300, 220));
    auto swatched = yarn(300, 220);
    swatched.washed_gauge = before.pieces[0].knit->gauge.mid;  // the very gauge that was guessed
    const auto after = planned(invented::knitted_scarf(), swatched);
    CHECK(after.need.spread < before.need.spread);
    CHECK(after.size > before.size);
    CHECK(after.pieces[0].knit->from_swatch);
}

TEST_CASE("a fitted article stays at its ideal size, and says how far the metres would go") {
    auto hat = invented::knitted_scarf();
    hat.fitted = true;
    const auto p = planned(hat, yarn(2000, 200));
    CHECK(p.size == hat.ideal);
    CHECK(p.reach == Reach::enough);
    CHECK(in_metres(p.covered) == Approx(in_metres(hat.largest)));
    CHECK(p.left() > Length{});
}

TEST_CASE("pieces add up to the plan, and its mass is its metres at the yarn's grist") {
    for (const auto& article : articles()) {
        const auto p = planned(article, yarn(700, 130));
        Length metres_of_pieces;
        for (const auto& made : p.pieces) metres_of_pieces += made.metres.mid;
        CHECK(in_metres(metres_of_pieces) == Approx(in_metres(p.need.mid)));
        CHECK(in_grams(p.mass) == Approx(in_metres(p.need.mid) * 0.130));
    }
}

TEST_CASE("a certainty out of range and a fabric nobody knows are refused by name") {
    const auto scarf = invented::knitted_scarf();
    for (const double asked : {0.49, 0.9995, 1.0, -1.0, std::nan("")})
        CHECK_THROWS_AS(planned(scarf, yarn(300, 200), {}, {asked, {}, {}}), std::invalid_argument);
    auto odd = scarf;
    odd.pieces[0].fabric = "felt";
    CHECK_THROWS_WITH_AS(planned(odd, yarn(300, 200)),
                         "template scarf, piece body: there is no knitted fabric 'felt'",
                         std::out_of_range);
}

TEST_CASE(
    "whole repeats cover the size asked, what no repeat fills is knitted plain at the edges") {
    // Found a defect: repeats were always rounded down, cloth came out up to 15 % too small.
    Template article =
        invented::article(Craft::knitted, invented::piece("lace", 40, 180, Grows::length));
    for (double wide = 8; wide < 90; wide += 1.7) {
        article.pieces[0].outline.width = centimetres(wide);
        const auto p = planned_at(article, yarn(900, 120), centimetres(180));
        const auto& piece = p.pieces[0];
        CAPTURE(wide);
        CHECK((piece.stitches - piece.edge_stitches) % 10 == 0);
        CHECK(piece.edge_stitches <= 5);
        CHECK(piece.rows % 8 == 0);
        CHECK(in_centimetres(piece.outline.width) >= 0.985 * wide);
        CHECK(in_centimetres(piece.outline.length) >= 0.985 * 180);
        // At most half a repeat, or its rows, beyond it.
        CHECK(in_centimetres(piece.outline.width) <=
              wide + 0.51 * 10 / piece.knit->stitches.si() * 100);
        CHECK(in_centimetres(piece.outline.length) <= 180 + 8.01 / piece.knit->rows.si() * 100);
        CHECK(p.certainty_at(p.size) == Approx(p.certainty));
    }
}
