#include <doctest/doctest.h>

#include <algorithm>

#include "engine/lay/constants.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/wales.hpp"
#include "tests/engine/lay/plain.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::lay;

namespace {

std::vector<Strand> knit(const char* chart, const lay::Spacing& s, int stitches, int rows) {
    return knitted(read_chart(chart, stitch_letters), s, stitches * s.stitch, rows * s.row);
}

constexpr const char* crossing_every_eight =
    "kkkkkkpp/kkkkkkpp/kkkkkkpp/kkkkkkpp/>>><<<pp/kkkkkkpp/kkkkkkpp/kkkkkkpp";

double loop_shown(const std::vector<Strand>& cloth, int stitches, int rows) {
    return yarn_shown(cloth, stitches * plain.stitch, rows * plain.row) / (stitches * rows);
}

}  // namespace

TEST_CASE("stocking stitch as drawn holds ks / l of yarn per area") {
    const auto cloth = knit("k", plain, 10, 10);
    const double l = 16.8;
    const double per_area = yarn_shown(cloth, 40, 30.54) / (40 * 30.54);
    CHECK(per_area == near(23.1 / l, 0.02));
}

TEST_CASE("every chart's repeat as drawn holds the yarn of its loops") {
    CHECK(loop_shown(knit("p/k", plain, 12, 8), 12, 8) == near(16.8, 0.02));
    CHECK(loop_shown(knit("kp", plain, 12, 8), 12, 8) == near(16.8, 0.02));
    CHECK(loop_shown(knit("kp/pk", plain, 12, 8), 12, 8) == near(16.8, 0.02));
    // A crossing stretches the stitches that cross; an eyelet those around it.
    CHECK(loop_shown(knit(crossing_every_eight, plain, 16, 16), 16, 16) == near(16.8, 0.15));
    CHECK(loop_shown(knit("kkkkkk/kkotkk/kkkkkk/kkkkkk", plain, 12, 8), 12, 8) == near(16.8, 0.10));
}

TEST_CASE("purl wales of a rib fall back and narrow, the repeat keeps its width") {
    const auto chart = read_chart("kkpp", stitch_letters);
    const Wales wales(chart, 4, 3);
    CHECK(wales.recedes(2));
    CHECK(!wales.recedes(1));
    CHECK(2 * wales.width(0) + 2 * wales.width(2) == doctest::Approx(16));
    CHECK(wales.width(2) == doctest::Approx(0.6 * wales.width(0)));
    CHECK(wales.middle(4) - wales.middle(0) == doctest::Approx(16));
    CHECK(wales.middle(-4) - wales.middle(0) == doctest::Approx(-16));
    const auto garter = read_chart("p/k", stitch_letters);
    CHECK(!Wales(garter, 4, 3).recedes(0));
    const auto purl = read_chart("p", stitch_letters);
    CHECK(!Wales(purl, 4, 3).recedes(0));  // nothing to fall back behind
}

TEST_CASE("stitches that cross arrive in each other's places, one group in front") {
    const auto chart = read_chart("kkkkp/kkkkp/>><<p/kkkkp/kkkkp/kkkkp", stitch_letters);
    const Wales wales(chart, 4, 3);
    const int row = 3;  // of the crossing, from the bottom
    const auto stands = [&](int wale, int r, double y) {
        return wales.moved(wale, r, {wales.middle(wale), y}).x;
    };
    CHECK(stands(0, row, 3 * (row + 1) - 1.5 * constants::crossing_rows) ==
          doctest::Approx(wales.middle(0)));
    // Half way up the crossing the loop below and the loop above meet.
    for (const auto& [from, to] : {std::pair{0, 2}, {1, 3}, {2, 0}, {3, 1}}) {
        const double y = 3 * (row + 1);
        CHECK(stands(from, row, y) == doctest::Approx(stands(to, row + 1, y)));
    }
    CHECK(stands(4, row, 12) == doctest::Approx(wales.middle(4)));  // a purl stitch beside it stays
    CHECK(wales.crosses_in_front(2, row));
    CHECK(!wales.crosses_in_front(0, row));
    CHECK(wales.crosses_in_front(0, row + 1));  // arrived from the right, still in front
}

TEST_CASE("a yarn over opens the cloth and its neighbour leans over") {
    const auto chart = read_chart("kkkkkk/kkkkkk/kkotkk/kkkkkk/kkkkkk/kkkkkk", stitch_letters);
    const Wales wales(chart, 4, 3);
    CHECK(wales.lean(2, 2, 1) > 4 * constants::leaning - 1);
    CHECK(wales.lean(3, 2, 1) == 0);
    CHECK(wales.lean(2, 1, 0) == 0);  // it is carried alone: its own loop bends, and no other
}

TEST_CASE("a slipped stitch reaches over two rows with the yarn behind") {
    double tallest = 0, deepest = 0;
    for (const auto& strand : knit("kk/ks", plain, 4, 6)) {
        const auto [low, high] = std::minmax_element(strand.line.begin(), strand.line.end(),
                                                     [](auto a, auto b) { return a.y < b.y; });
        tallest = std::max(tallest, high->y - low->y);
        for (const auto& spot : strand.line) deepest = std::min(deepest, spot.z);
    }
    CHECK(tallest > plain.row * 1.2);
    CHECK(deepest < -1.9 * constants::loop_depth * plain.thickness);
}

TEST_CASE("the spacing of a planned cloth gives back its metres per area") {
    KnitCloth cloth;
    cloth.stitches = stitches_per_10cm(25);
    cloth.rows = stitches_per_10cm(33);
    cloth.metres_per_area = {metres_per_square_metre(1400), 0.1};
    const auto s = spacing(cloth, millimetres(1));
    CHECK(s.stitch == doctest::Approx(4));
    CHECK(s.loop / (s.stitch * s.row) == doctest::Approx(1.4));
}
