// Where skeins end, against the areas of shapes and the order of the work.
#include "engine/evidence/skein_ends.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/near.hpp"

using namespace gristwright;

namespace {

PieceTemplate body(Shape shape, const char* name = "body", int count = 1) {
    PieceTemplate out{name, "plain", {shape, centimetres(100), centimetres(100), {}}};
    out.count = count;
    return out;
}

// Each piece takes so many metres, all alike together.
struct Part {
    PieceTemplate piece;
    double takes;
    int rows;
};

Plan knitted(const std::vector<Part>& all, std::vector<std::string> order = {}) {
    Plan out;
    auto article = std::make_shared<Template>();
    article->worked = std::move(order);
    out.article = article;
    for (const auto& made : all) {
        article->pieces.push_back(made.piece);
        PlanPiece piece;
        piece.piece = std::make_shared<const PieceTemplate>(made.piece);
        piece.knit.emplace();
        piece.outline = made.piece.outline;
        piece.metres = {metres(made.takes), 0.05};
        piece.ours = metres(made.takes);
        piece.rows = made.rows;
        out.pieces.push_back(piece);
    }
    return out;
}

Plan woven(const PieceTemplate& panel, Loom loom) {
    Plan out;
    auto article = std::make_shared<Template>();
    article->loom = loom;
    article->pieces.push_back(panel);
    out.article = article;
    PlanPiece piece;
    piece.piece = std::make_shared<const PieceTemplate>(panel);
    piece.woven.emplace();
    piece.warp = metres(200);
    piece.weft = metres(200);
    piece.panel.ends = 100;
    piece.panel.picks = 400;
    out.pieces.push_back(piece);
    return out;
}

}  // namespace

TEST_CASE("a quarter of a triangle's yarn is half of its rows, of a rectangle's a quarter") {
    const auto triangle = body(Shape::triangle), rectangle = body(Shape::rectangle);
    const std::vector<Length> skeins{metres(100), metres(300), metres(500)};
    const auto in_triangle =
        skein_ends(knitted({{triangle, 400, 200}}), skeins, Taking::one_by_one);
    REQUIRE(in_triangle.size() == 1);  // the second ends where the piece does
    CHECK(in_triangle[0].skein == 0);
    CHECK(in_triangle[0].place.share == near(0.5, 1e-6));
    const auto plan = knitted({{rectangle, 400, 202}});
    const auto in_rectangle = skein_ends(plan, skeins, Taking::one_by_one);
    REQUIRE(in_rectangle.size() == 1);
    CHECK(in_rectangle[0].place.share == near(0.25, 1e-6));
    CHECK(done_at(plan, in_rectangle[0].place) == 50);  // 50.5 rows: the 51st is in work
    CHECK(in_work_at(plan, in_rectangle[0].place) == 51);
    CHECK(skein_ends(plan, skeins, Taking::one_by_one, 0.5).front().place.share == near(0.5, 1e-6));
    CHECK(skein_ends(plan, skeins, Taking::one_by_one, 1, metres(100)).empty());
    CHECK(skein_ends(plan, {metres(500)}, Taking::one_by_one).empty());
}

TEST_CASE("a pair is made one after the other where its template says so, else piece by piece") {
    const auto hand = body(Shape::tube, "hand", 2), wrist = body(Shape::tube, "wrist", 2);
    const std::vector<Part> pieces{{hand, 80, 40}, {wrist, 20, 10}};
    const std::vector<Length> skeins{metres(30), metres(100)};
    const auto ordered = knitted(pieces, {"wrist", "hand", "wrist", "hand"});
    const auto first = skein_ends(ordered, skeins, Taking::one_by_one);
    REQUIRE(first.size() == 1);
    CHECK(first[0].place.piece == 0);
    CHECK(first[0].place.which == 1);
    CHECK(done_at(ordered, first[0].place) == 20);  // 10 m in the wrist, 20 of 40 m in the hand
    std::vector<std::pair<std::size_t, int>> worked;
    for (const auto& stretch : stretches(ordered))
        worked.emplace_back(stretch.piece, stretch.which);
    CHECK(worked == std::vector<std::pair<std::size_t, int>>{{1, 1}, {0, 1}, {1, 2}, {0, 2}});
    worked.clear();
    for (const auto& stretch : stretches(knitted(pieces)))
        worked.emplace_back(stretch.piece, stretch.which);
    CHECK(worked == std::vector<std::pair<std::size_t, int>>{{0, 1}, {0, 2}, {1, 1}, {1, 2}});
}

TEST_CASE("a sleeve from the cuff has used less at half its rows than one from the shoulder") {
    auto sleeve = body(Shape::taper, "sleeve");
    sleeve.outline.narrow = centimetres(50);
    const auto down = knitted({{sleeve, 300, 100}});
    sleeve.narrow_first = true;
    const auto up = knitted({{sleeve, 300, 100}});
    // Half the rows of the narrow half: 5/8 of the width on the average, against 3/4 of all.
    CHECK(yarn_by_row(up.pieces[0], 0.5) == near(0.5 * 0.625 / 0.75, 1e-9));
    CHECK(yarn_by_row(down.pieces[0], 0.5) == near(1 - 0.5 * 0.625 / 0.75, 1e-9));
    for (const auto& plan : {down, up})
        for (const double rows : {0.1, 0.5, 0.9})
            CHECK(row_by_yarn(plan.pieces[0], yarn_by_row(plan.pieces[0], rows)) ==
                  near(rows, 1e-9));
}

TEST_CASE("a loom's warp is wound for all alike, on pins each square has its own") {
    const auto square = body(Shape::rectangle, "square", 4);
    const std::vector<Length> skeins{metres(120), metres(100), metres(500)};
    const auto on_loom = woven(square, Loom::warped), on_pins = woven(square, Loom::pins);
    const auto loom = skein_ends(on_loom, skeins, Taking::one_by_one),
               pins = skein_ends(on_pins, skeins, Taking::one_by_one);
    REQUIRE(loom.size() == 2);
    CHECK(loom[0].place.warp);
    CHECK(in_work_at(on_loom, loom[0].place) == 60);
    CHECK_FALSE(loom[1].place.warp);
    CHECK(loom[1].place.which == 1);  // 20 of the first's 50 m of weft
    CHECK(done_at(on_loom, loom[1].place) == 160);
    REQUIRE(pins.size() == 2);
    CHECK(pins[0].place.warp);
    CHECK(pins[0].place.which == 2);  // 20 of its 50 m
    CHECK(in_work_at(on_pins, pins[0].place) == 40);
    CHECK(pins[1].place.which == 3);
}

TEST_CASE("another yarn's piece uses up no skein") {
    const auto middle = body(Shape::rectangle, "middle"), border = body(Shape::rectangle, "border");
    auto plan = knitted({{middle, 300, 100}, {border, 100, 100}});
    plan.pieces[0].ours = {};
    const auto ends = skein_ends(plan, {metres(50), metres(200)}, Taking::one_by_one);
    REQUIRE(ends.size() == 1);
    CHECK(ends[0].place.piece == 1);
    CHECK(done_at(plan, ends[0].place) == 50);
}

TEST_CASE("two skeins by turns both run through, and neither ends in the middle") {
    const auto shape = body(Shape::rectangle);
    const auto plan = knitted({{shape, 200, 100}});
    // One after another the first of 120 m ends at row 60; by turns each gives 100 m.
    CHECK(skein_ends(plan, {metres(120), metres(150)}, Taking::one_by_one).size() == 1);
    CHECK(skein_ends(plan, {metres(120), metres(150)}, Taking::by_turns).empty());
    // Of 80 m the first ends when 160 m are used, and the other goes on alone.
    const auto ends = skein_ends(plan, {metres(80), metres(150)}, Taking::by_turns);
    REQUIRE(ends.size() == 1);
    CHECK(ends[0].skein == 0);
    CHECK(ends[0].place.share == near(0.8, 1e-9));
    // The third takes the place of the one that ends: 30 m beside 30 m, then 50 beside 50.
    const auto three = taken({metres(80), metres(30), metres(90)}, Taking::by_turns, metres(160));
    REQUIRE(three.ends.size() == 2);
    CHECK(three.ends[0].skein == 1);
    CHECK(in_metres(three.ends[0].used) == near(60, 1e-9));
    CHECK(three.ends[1].skein == 0);
    CHECK(in_metres(three.ends[1].used) == near(160, 1e-9));
    CHECK(in_metres(three.of_each[2]) == near(50, 1e-9));
}

TEST_CASE("what is taken of the skeins is what is wanted, as far as they reach") {
    const std::vector<Length> skeins{metres(20), metres(70), metres(10), metres(45)};
    for (const auto taking : {Taking::one_by_one, Taking::by_turns})
        for (const double wanted : {0.0, 5.0, 33.0, 100.0, 145.0, 300.0}) {
            const auto out = taken(skeins, taking, metres(wanted));
            double all = 0;
            for (std::size_t s = 0; s < skeins.size(); ++s) {
                CHECK(out.of_each[s] <= skeins[s]);
                all += in_metres(out.of_each[s]);
            }
            CHECK(all == near(std::min(wanted, 145.0), 1e-9));
            CHECK(out.ends.size() <= skeins.size());
        }
}
