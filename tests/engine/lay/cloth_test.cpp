#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

#include "engine/lay/cloth.hpp"
#include "tests/near.hpp"

using namespace gristwright::lay;

TEST_CASE("cover of nothing, of one straight yarn, of everything") {
    Cloth cloth{10, 10, 1, {}};
    CHECK(cover(cloth) == 0);
    cloth.runs.push_back({{{-1, 5}, {11, 5}}, 0, false, false});
    CHECK(cover(cloth) == near(0.1, 0.01));
    cloth.thickness = 30;
    CHECK(cover(cloth) == 1);
}

TEST_CASE("yarn over yarn hides nothing more") {
    const Run run{{{-1, 5}, {11, 5}}, 0, false, false};
    const Cloth once{10, 10, 1, {run}}, twice{10, 10, 1, {run, run}};
    CHECK(cover(once) == cover(twice));
}

TEST_CASE("a ring covers what a ring does") {
    Run ring;
    for (int i = 0; i <= 200; ++i) {
        const double a = 2 * std::numbers::pi * i / 200;
        ring.line.push_back({10 + 5 * std::cos(a), 10 + 5 * std::sin(a)});
    }
    const Cloth cloth{20, 20, 1, {ring}};
    const double area = std::numbers::pi * (5.5 * 5.5 - 4.5 * 4.5);
    CHECK(cover(cloth) == near(area / 400, 0.01));
    CHECK(yarn_shown(cloth) == near(length(ring), 0.001));
}

TEST_CASE("yarn beyond the window is not shown") {
    const Cloth cloth{10, 10, 1, {{{{-10, 5}, {5, 5}}, 0, false, false}}};
    CHECK(yarn_shown(cloth) == near(5, 0.06));
}

TEST_CASE("places along a run") {
    const Run run{{{0, 0}, {3, 0}, {3, 4}}, 0, false, false};
    CHECK(length(run) == doctest::Approx(7));
    CHECK(at(run, 5).y == doctest::Approx(2));
    CHECK(at(run, 99).y == doctest::Approx(4));
}

TEST_CASE("woven cover closes when yarns touch and is never above 1") {
    CHECK(woven_cover(0, 0) == 0);
    CHECK(woven_cover(0.5, 0.5) == doctest::Approx(0.75));
    CHECK(woven_cover(1.4, 0.2) == 1);
}

TEST_CASE("layers are sorted and keep their order within") {
    Cloth cloth{1,
                1,
                1,
                {{{{0, 0}, {1, 0}}, 2, false, false},
                 {{{0, 1}, {1, 0}}, 0, false, false},
                 {{{0, 2}, {1, 0}}, 0, true, false}}};
    sort_by_layer(cloth);
    CHECK(cloth.runs[0].line[0].y == 1);
    CHECK(cloth.runs[1].second);
    CHECK(cloth.runs[2].layer == 2);
}
