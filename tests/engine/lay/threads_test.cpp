// Woven cloth that a chart of crossings alone cannot say: threads that slide, ends that cross,
// wefts that share a shed.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "engine/lay/laid.hpp"
#include "engine/lay/threads.hpp"
#include "engine/lay/web.hpp"
#include "engine/lay/wefts.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::lay;

namespace {

constexpr const char* mock_leno = "-x-x-x/---xxx/-x-x-x/x-x-x-/xxx---/x-x-x-";

Threads threads(const Chart& chart, WeaveBuild built = WeaveBuild::single_threads) {
    return {chart, 2, 2, 1, built, false};
}

Weave weave(const char* areas, WeaveBuild built) {
    Weave out;
    out.chart = "x-/-x", out.areas = areas, out.built = built;
    return out;
}

}  // namespace

TEST_CASE("threads between which none passes slide together, plain weave stands even") {
    const auto plain = read_chart("x-/-x", weave_letters);
    for (int i = -3; i < 6; ++i) CHECK(threads(plain).end(i, 2) == doctest::Approx(2 * i + 1));
    const auto chart = read_chart(mock_leno, weave_letters);
    const auto web = threads(chart);
    const auto gap = [&](int i) { return web.end(i + 1, 1) - web.end(i, 1); };
    CHECK(gap(2) > 1.3 * gap(1));  // the hole between two groups of three
    CHECK(gap(1) > 0.8);           // they cannot lie in each other
    CHECK(web.end(6, 1) - web.end(0, 1) == doctest::Approx(12));
    CHECK(web.pick(1, 3) - web.pick(1, 2) > 1.3 * (web.pick(1, 2) - web.pick(1, 1)));
}

TEST_CASE("leno: two ends hug each other, change sides at every pick, and pass over each other") {
    const auto chart = read_chart("x-/-x", weave_letters);
    const auto web = threads(chart, WeaveBuild::crossed_ends);
    CHECK(web.end(0, 0) < web.end(1, 0));
    CHECK(web.end(0, 1) > web.end(1, 1));
    CHECK(std::abs(web.end(0, 1) - web.end(1, 1)) < 1.01);
    CHECK(web.end(2, 0) - web.end(1, 0) > 2.9);  // the gap to the next pair
    const auto cloth = laid(weave("", WeaveBuild::crossed_ends), {2, 2, 1}, 12, 12);
    double closest = 9;
    for (const auto& a : cloth[1].line)
        for (const auto& b : cloth[2].line)
            closest = std::min(closest, std::hypot(a.x - b.x, a.y - b.y, a.z - b.z));
    CHECK(closest > 0.6);  // of a thickness: they press, and do not run through each other
}

TEST_CASE("clasped weft: each yarn comes from its own side, round the other's, and goes back") {
    const auto cloth = laid(weave("11112222", WeaveBuild::clasped_picks), {1, 1, 0.6}, 16, 8);
    int from_left = 0, from_right = 0;
    double left_reaches = 0, right_reaches = 99;
    for (const auto& strand : cloth) {
        const auto &from = strand.line.front(), &to = strand.line.back();
        if (from.y > 7 || from.y < 0 || std::abs(from.y - to.y) > 0.6) continue;  // no pick
        CHECK(from.x == doctest::Approx(to.x));
        for (const auto& p : strand.line)
            if (strand.yarn == 0)
                left_reaches = std::max(left_reaches, p.x);
            else
                right_reaches = std::min(right_reaches, p.x);
        ++(strand.yarn == 0 ? from_left : from_right);
    }
    CHECK(from_left > 5);
    CHECK(from_right == from_left);
    CHECK(left_reaches > right_reaches);  // they hold each other
    CHECK(left_reaches < right_reaches + 1.5);
}

TEST_CASE("a laid-in weft lies beside the ground's in the same shed, and only in its area") {
    const auto chart = read_chart("1331", weft_areas);
    const auto stretches = Areas(chart, false, 0, 3).of_pick(0);
    REQUIRE(stretches.size() == 4);
    CHECK(stretches[1].yarn == 0);
    CHECK(stretches[2].yarn == 1);
    CHECK(stretches[2].from == 1);
    CHECK(stretches[2].to == 2);
    CHECK(stretches[2].beside);
    CHECK_FALSE(stretches[0].beside);
}

TEST_CASE("a waffle's floats draw their ends forward on the face and back on the other side") {
    const auto chart = read_chart("-x---x/x-x-x-/xx-x-x/x-x-x-/-x---x/x-----", weave_letters);
    const Web web(chart);
    const auto height = [&](int i, int j) { return (web.end(i, j) + web.pick(i, j)) / 2; };
    CHECK(height(0, 0) > height(3, 3) + 1);           // a cell's corner and its middle
    CHECK(height(0, 0) == near(-height(3, 3), 0.5));  // the other side is a waffle too
    const auto twill =
        read_chart("x--x/--xx/-xx-/xx--", weave_letters);  // one that has two faces alike
    for (int i = 0; i < 4; ++i) {
        const Web flat(twill);
        CHECK(flat.end(i, 0) + flat.pick(i, 0) == doctest::Approx(0));
    }
}
