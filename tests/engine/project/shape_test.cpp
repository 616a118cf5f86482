#include "engine/project/shape.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

constexpr Length wide = centimetres(90), high = centimetres(60), tip = centimetres(30);

struct Drawn {
    Outline outline;
    double widest_cm, height_cm;  // of the cloth as it is worked
    double (*width)(double t);    // of a row, as a share of the widest row; t: share of rows
};

double even(double) { return 1; }
double opening(double t) { return t; }

// Each shape drawn again from its description, row by row: nothing here comes from shape.cpp.
// A cap's crown is a seventh of its width deep and closes evenly: 90 of 420 here.
const std::vector<Drawn> drawings{
    {{Shape::rectangle, wide, high, {}}, 90, 60, even},
    {{Shape::tube, wide, high, {}}, 90, 60, even},
    // Two wedges from the neck, each closing at the tip: every row is both wedges' width.
    {{Shape::triangle, wide, {}, {}}, 90, 45, opening},
    {{Shape::bias_triangle, wide, {}, {}}, 90, 90, opening},
    {{Shape::half_circle, wide, {}, {}}, 45 * std::numbers::pi, 45, opening},
    {{Shape::circle, wide, {}, {}}, 90 * std::numbers::pi, 45, opening},
    {{Shape::crescent, wide, high, {}}, 90, 60, [](double t) { return std::sqrt(1 - t); }},
    {{Shape::square_from_corner, wide, {}, {}},
     90 * std::numbers::sqrt2,
     90 * std::numbers::sqrt2,
     [](double t) { return 1 - std::abs(2 * t - 1); }},
    {{Shape::cap, wide, high, {}},
     90,
     60,
     [](double t) { return std::min(1.0, (1 - t) * 420 / 90); }},
    {{Shape::taper, wide, high, tip}, 90, 60, [](double t) { return 1 - t * 2 / 3; }},
};

// The mean row, as a share of the widest, over the rows up to t: trapezes.
double filled(const Drawn& drawn, double t) {
    constexpr int rows = 6000;
    double sum = 0;
    for (int i = 0; i < rows; ++i)
        sum += drawn.width(t * i / rows) + drawn.width(t * (i + 1) / rows);
    return t * sum / (2 * rows);
}

}  // namespace

TEST_CASE("area is the sum of the rows") {
    for (const auto& drawn : drawings) {
        INFO(words(drawn.outline.shape));
        const double cm2 = filled(drawn, 1) * drawn.widest_cm * drawn.height_cm;
        CHECK(1e4 * in_square_metres(area(drawn.outline)) == near(cm2, 1e-4));
    }
}

TEST_CASE("yarn after a share of the rows is the share of the cloth they make") {
    for (const auto& drawn : drawings)
        for (const double t : {0.1, 0.25, 0.5, 0.7, 0.75, 0.9}) {
            INFO(words(drawn.outline.shape), " after ", t);
            const double cloth = filled(drawn, t) / filled(drawn, 1);
            CHECK(yarn_after_rows(drawn.outline, t) == near(cloth, 1e-4));
        }
}

TEST_CASE("yarn only goes forward, from none to all, and rows for yarn find the way back") {
    for (const auto& drawn : drawings) {
        INFO(words(drawn.outline.shape));
        CHECK(yarn_after_rows(drawn.outline, 0) == Approx(0));
        CHECK(yarn_after_rows(drawn.outline, 1) == Approx(1));
        CHECK(yarn_after_rows(drawn.outline, -0.5) == Approx(0));
        CHECK(yarn_after_rows(drawn.outline, 1.5) == Approx(1));
        double before = 0;
        for (int percent = 1; percent < 100; ++percent) {
            const double used = yarn_after_rows(drawn.outline, percent / 100.0);
            CHECK(used > before);
            CHECK(rows_for_yarn(drawn.outline, used) == near(percent / 100.0, 1e-6));
            before = used;
        }
    }
}

TEST_CASE("a triangle from the neck is half done when seven rows in ten are") {
    const Outline shawl{Shape::triangle, metres(1.6), {}, {}};
    CHECK(rows_for_yarn(shawl, 0.5) == near(std::sqrt(0.5), 1e-6));
}

TEST_CASE("stitches and rows hold as many loops as the area does") {
    const auto w = stitches_per_10cm(22), c = stitches_per_10cm(29);
    for (const auto& drawn : drawings) {
        INFO(words(drawn.outline.shape));
        const auto [stitches, rows] = stitches_and_rows(drawn.outline, w, c);
        const double loops = w.si() * c.si() * area(drawn.outline).si();
        CHECK(stitches * rows * filled(drawn, 1) == near(loops, 1e-4));
    }
}

TEST_CASE("shapes of one measure take no notice of the length, the others do") {
    for (const auto& drawn : drawings) {
        INFO(words(drawn.outline.shape));
        auto longer = drawn.outline;
        longer.length = longer.length * 2 + metres(1);
        CHECK((area(longer) == area(drawn.outline)) == one_measure(drawn.outline.shape));
    }
}

TEST_CASE("every shape is found by its own words and no other") {
    for (const auto& drawn : drawings)
        CHECK(shape_named(words(drawn.outline.shape)) == drawn.outline.shape);
    CHECK_FALSE(shape_named("pentagon"));
    CHECK_FALSE(shape_named(""));
}

TEST_CASE("a taper that does not narrow is a rectangle, a shallow cap is all crown") {
    const Outline straight{Shape::taper, wide, high, wide};
    CHECK(area(straight) == area({Shape::rectangle, wide, high, {}}));
    CHECK(yarn_after_rows(straight, 0.3) == Approx(0.3));
    const Outline beret{Shape::cap, wide, centimetres(10), {}};
    CHECK(area(beret).si() == Approx(0.9 * 0.1 / 2));
    CHECK(yarn_after_rows(beret, 0.5) == Approx(0.75));
}
