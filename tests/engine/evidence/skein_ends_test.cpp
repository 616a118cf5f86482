// Where skeins end, against the areas of shapes.
#include "engine/evidence/skein_ends.hpp"

#include <doctest/doctest.h>

#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

Plan of_one_piece(const PieceTemplate& body, int rows) {
    Plan out;
    PlanPiece piece;
    piece.piece = invented::lent(body);
    piece.knit.emplace();
    piece.outline = body.outline;
    piece.metres = {metres(400), 0.05};
    piece.ours = metres(400);
    piece.rows = rows;
    out.pieces.push_back(piece);
    return out;
}

PieceTemplate body(Shape shape) {
    return {"body", "plain", {shape, centimetres(100), centimetres(100), {}}};
}

}  // namespace

TEST_CASE("a quarter of a triangle's yarn is half of its rows, of a rectangle's a quarter") {
    const auto triangle = body(Shape::triangle), rectangle = body(Shape::rectangle);
    const std::vector<Length> skeins{metres(100), metres(300), metres(500)};
    const auto in_triangle = skein_ends(of_one_piece(triangle, 200), skeins);
    REQUIRE(in_triangle.size() == 1);  // the second ends where the piece does
    CHECK(in_triangle[0].skein == 0);
    CHECK(in_triangle[0].rows_share == near(0.5, 1e-6));
    CHECK(in_triangle[0].row == near(100, 1e-4));
    const auto in_rectangle = skein_ends(of_one_piece(rectangle, 200), skeins);
    REQUIRE(in_rectangle.size() == 1);
    CHECK(in_rectangle[0].row == near(50, 1e-4));
    CHECK(skein_ends(of_one_piece(rectangle, 200), skeins, 0.5).front().row == near(100, 1e-4));
    CHECK(skein_ends(of_one_piece(rectangle, 200), skeins, 1, metres(100)).empty());
}

TEST_CASE("no skein's end is told of where the yarn does not go row by row into one piece") {
    const auto shape = body(Shape::rectangle);
    const std::vector<Length> skeins{metres(100), metres(300)};
    auto several = shape;
    several.count = 2;
    CHECK(skein_ends(of_one_piece(several, 200), skeins).empty());
    auto with_another = of_one_piece(shape, 200);
    with_another.pieces[0].ours = metres(200);
    CHECK(skein_ends(with_another, skeins).empty());
    auto woven = of_one_piece(shape, 200);
    woven.pieces[0].knit.reset();
    CHECK(skein_ends(woven, skeins).empty());
    CHECK(skein_ends(of_one_piece(shape, 200), {metres(500)}).empty());
}
