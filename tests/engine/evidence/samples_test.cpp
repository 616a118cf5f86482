// How well a sample tells.
#include "engine/evidence/samples.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "tests/near.hpp"

using namespace gristwright;

namespace {

// Worked by hand: 4.4 m/g yarn; knitted at 2.8 wales and 4.0 courses per cm with 1.40 cm of yarn in
// a stitch, 0.1568 m per cm2; woven, weft only, 5 picks per cm and 10 % take-up, 0.055 m per cm2,
// marks read to 0.05 cm each. Reading to half a stitch at both ends: 0.204 stitches.
Sample knitted() {
    Sample s;
    s.fixed = 1.5;
    s.square = 0.1568e4;
    s.count = 280;
    s.second_count = 400;
    s.read_error = std::sqrt(2.0) * 0.25 / std::sqrt(3.0);
    return s;
}

Sample woven() {
    Sample s;
    s.fixed = 1.0;
    s.square = 0.055e4;
    s.count = 500;
    s.second_count = 500;
    s.read_error = knitted().read_error;
    s.mark_error = 0.0005;
    return s;
}

}  // namespace

// Two samples from 60 m with the larger error as small as can be: 44.73 and 15.27 m.
TEST_CASE("sides of 16.6 and 16.1 cm take 44.73 and 15.27 m and tell to 0.55 % (worked by hand)") {
    CHECK(in_centimetres(knitted().side(metres(44.73))) == near(16.6, 0.005));
    CHECK(in_centimetres(woven().side(metres(15.27))) == near(16.1, 0.005));
    CHECK(knitted().error(knitted().side(metres(44.73))) == near(0.00549, 0.002));
    CHECK(woven().error(woven().side(metres(15.27))) == near(0.00549, 0.002));
}

TEST_CASE("unevenness of 6 % doubles the error (worked by hand: 1.09 % at 50.0 and 10.0 m)") {
    auto a = knitted(), b = woven();
    a.variation = b.variation = 0.06;
    CHECK(a.error(a.side(metres(50))) == near(0.0109, 0.01));
    CHECK(b.error(b.side(metres(10))) == near(0.0109, 0.01));
}

TEST_CASE("its own warp's waste comes first (worked by hand: 10.9 cm, 24.6 m of waste)") {
    auto b = woven();
    b.linear = 225;
    b.square = 0.109e4;
    const auto rest = b.metres(centimetres(10.9)).si() - b.fixed - 0.109e4 * 0.109 * 0.109;
    CHECK(rest == near(24.6, 0.01));
}

TEST_CASE("metres and side undo each other, and the error falls with the side") {
    auto s = woven();
    s.linear = 100;
    for (const double side : {5.0, 10.0, 20.0})
        CHECK(in_centimetres(s.side(s.metres(centimetres(side)))) == near(side, 1e-9));
    CHECK(s.side(metres(0.5)) == Length{});
    CHECK(s.error(centimetres(20)) < s.error(centimetres(10)));
    CHECK(std::isinf(s.error({})));
}

TEST_CASE("the error is what counting many simulated swatches gives, within 5 %") {
    std::mt19937_64 random(7);
    std::normal_distribution<double> stitch(1, 0.06);
    std::uniform_real_distribution<double> reading(-0.25, 0.25);
    auto s = knitted();
    s.variation = 0.06;
    const auto side = centimetres(12);
    const int threads = static_cast<int>(std::lround(0.8 * side.si() * s.count));
    double squares = 0;
    constexpr int swatches = 20000;
    for (int i = 0; i < swatches; ++i) {
        double width = 0;
        for (int t = 0; t < threads; ++t) width += stitch(random);
        const double counted = threads + reading(random) - reading(random);
        squares += std::pow(counted / width - 1, 2);
    }
    CHECK(std::sqrt(squares / swatches) == near(s.error(side), 0.05));
}

TEST_CASE("a sensible sample is a hand's width, or larger where that tells more") {
    const auto range = sensible(knitted());
    CHECK(in_centimetres(range.least) == near(10, 1e-9));
    CHECK(range.most >= range.least);
    CHECK(knitted().error(range.most) <= 0.0151);
}
