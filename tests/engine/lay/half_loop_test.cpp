#include <doctest/doctest.h>

#include <algorithm>

#include "engine/cloth/loop.hpp"
#include "engine/lay/half_loop.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::lay;

namespace {

// Peirce's closest plain knitting, in yarn thicknesses (1947, from memory).
constexpr double stitch = 4, row = 3.364;
// From his arcs: the head's middle line is 3 thicknesses across, two legs and half a head on either
// side; the neck between the legs is 1. Derived here from his spacing of 4.
constexpr double widest = 1.5, neck = 0.5, overlap = 3.1;

double furthest_left_of_head(const HalfLoop& loop) {
    double out = 0;
    for (int i = 50; i <= 100; ++i) out = std::min(out, loop.at(i / 100.0).x);
    return out;
}

double furthest_right_of_foot(const HalfLoop& loop) {
    double out = -loop.w / 2;
    for (int i = 0; i <= 50; ++i) out = std::max(out, loop.at(i / 100.0).x);
    return out;
}

}  // namespace

TEST_CASE("Peirce's loop at his closest holds Chamberlain's 16.67 thicknesses") {
    CHECK(peirce_loop(stitch, row, 1) == near(16.67, 0.001));
}

TEST_CASE("a drawn loop holds the yarn it was given") {
    for (const double length : {3.0, 5.0, 8.33, 12.0})
        CHECK(half_loop(4, 5, length).length() ==
              near(std::max(length, half_loop(4, 5, 0).length()), 0.001));
}

TEST_CASE("over Peirce's spacings the drawn loop is as wide and as narrow as his") {
    const auto loop = half_loop(stitch, row + overlap, peirce_loop(stitch, row, 1) / 2);
    CHECK(-furthest_left_of_head(loop) == near(widest, 0.12));
    CHECK(-furthest_right_of_foot(loop) == near(neck, 0.36));
}

TEST_CASE("a drawn loop is level at its foot and its head and passes through its ends") {
    const auto loop = half_loop(4, 5, 8);
    CHECK(loop.at(0).x == doctest::Approx(-2));
    CHECK(loop.at(0).y == doctest::Approx(0));
    CHECK(loop.at(1).x == doctest::Approx(0));
    CHECK(loop.at(1).y == doctest::Approx(5));
    CHECK(loop.at(0.01).y < 0.01);
    CHECK(loop.at(0.99).y > 4.99);
}

TEST_CASE("stitches and rows from l = k constants leave the drawn loop longer than its diagonal") {
    for (const double l : {6.0, 10.0, 25.0}) {
        const double w = 1000 / stitches_from_loop(millimetres(l), Relaxation::full).si();
        const double c = 1000 / rows_from_loop(millimetres(l), Relaxation::full).si();
        CHECK(w * c == near(l * l / 23.1, 0.001));  // S l^2 = ks
        const auto loop = half_loop(w, c, l / 2);
        CHECK(loop.length() == near(l / 2, 0.001));
        CHECK(loop.reach > w / 6);
    }
}
