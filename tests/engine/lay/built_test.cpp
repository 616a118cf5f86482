// Knitted cloth that a chart of stitches alone cannot say: areas, two layers, blocks.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/lay/laid.hpp"
#include "tests/engine/lay/plain.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::lay;

namespace {

KnitFabric fabric(const char* areas, KnitBuild built = KnitBuild::one_layer) {
    KnitFabric out;
    out.chart = "k", out.areas = areas, out.built = built, out.stitch_repeat = 10;
    return out;
}

double shown(const std::vector<Strand>& strands, int yarn, double width, double height) {
    std::vector<Strand> own;
    for (const auto& strand : strands)
        if (strand.yarn == yarn) own.push_back(strand);
    return yarn_shown(own, width, height);
}

// The yarn that lies nearest the eye about a place.
int topmost(const std::vector<Strand>& strands, double x, double y) {
    double highest = -99;
    int out = -1;
    for (const auto& strand : strands)
        for (const auto& p : strand.line)
            if (std::hypot(p.x - x, p.y - y) < 1.5 && p.z > highest)
                highest = p.z, out = strand.yarn;
    return out;
}

}  // namespace

TEST_CASE("each area of colour is its own yarn's, and takes no more of it than plain cloth") {
    const auto cloth = laid(fabric("1112/1122"), plain, 32, 24.432);
    CHECK(shown(cloth, 0, 32, 24.432) == near(16.8 * 64 * 5 / 8, 16));
    CHECK(shown(cloth, 1, 32, 24.432) == near(16.8 * 64 * 3 / 8, 16));
    CHECK(topmost(cloth, 2, 4.6) == 0);   // the first stitch of the second row, from the bottom
    CHECK(topmost(cloth, 14, 4.6) == 1);  // its fourth
    CHECK(of_two_yarns(fabric("1112/1122")));
    CHECK(repeat_across(fabric("1112/1122")) == 4);
}

TEST_CASE(
    "double knitting is two layers, each the other yarn where the first is, and half the loop") {
    const auto one = laid(fabric("1"), plain, 40, 30.54);
    const auto two = laid(fabric("1", KnitBuild::two_layers), {4.0, 3.054, 33.6, 1.0}, 40, 30.54);
    CHECK(shown(two, 0, 40, 30.54) == near(yarn_shown(one, 40, 30.54), 0.01));
    CHECK(shown(two, 1, 40, 30.54) == near(yarn_shown(one, 40, 30.54), 0.01));
    CHECK(topmost(two, 30, 20) == 0);
    const auto turned = corner_turned(two, 40, 30.54, 2.2);
    CHECK(topmost(turned, 34, 18) == 1);   // the flap shows the back
    CHECK(topmost(turned, 8, 8) == 0);     // the rest the front
    CHECK(topmost(turned, 38, 29) == -1);  // and where the corner was there is nothing
}

TEST_CASE("blocks on the slant hold plain cloth's yarn, and the next tier's wales cross theirs") {
    const auto cloth = laid(fabric("", KnitBuild::slanted_blocks), plain, 90, 90);
    CHECK(yarn_shown(cloth, 90, 90) / (90 * 90) == near(16.8 / (4 * 3.054), 0.04));
    // A row runs on from stitch to stitch: across its wales.
    const auto way = [](const Strand& strand) {
        const auto &from = strand.line.front(), &to = strand.line[4 * 29];  // a stitch has 29 spots
        return std::atan2(to.y - from.y, to.x - from.x);
    };
    std::array<int, 2> tiers{};
    for (const auto& strand : cloth) {
        CHECK(std::abs(std::abs(way(strand)) - 0.785) < 0.1);
        ++tiers[way(strand) > 0 ? 0 : 1];
    }
    CHECK(std::abs(tiers[0] - tiers[1]) <= 4);
}
