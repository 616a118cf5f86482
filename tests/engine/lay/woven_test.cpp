#include "engine/lay/woven.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/near.hpp"

using namespace gristwright::lay;

namespace {

std::vector<Strand> weave(const char* chart) {
    return woven(read_chart(chart, weave_letters), 2, 2, 0.5, 16, 16);
}

double depth(const Strand& strand, double along_y) {
    const auto nearest =
        std::min_element(strand.line.begin(), strand.line.end(), [&](const Spot& a, const Spot& b) {
            return std::abs(a.y - along_y) < std::abs(b.y - along_y);
        });
    return nearest->z;
}

}  // namespace

TEST_CASE("an end rises over one pick and sinks under the next") {
    const auto strands = weave("x-/-x");
    const auto& end = strands[1];  // the first inside the window
    CHECK(end.yarn == 0);
    CHECK(depth(end, 1) == near(-depth(end, 3), 1e-9));
    CHECK(depth(end, 1) == near(depth(end, 5), 1e-9));
    CHECK(std::abs(depth(end, 2)) < 1e-9);
}

TEST_CASE("an end over two picks together stays up between them") {
    const auto strands = weave("x--x/--xx/-xx-/xx--");
    double highest = 0, between = 0;
    for (int pick = 0; pick < 6; ++pick) {
        const double here = depth(strands[1], 2 * pick + 1), next = depth(strands[1], 2 * pick + 3);
        if (here > 0 && next > 0) highest = here, between = depth(strands[1], 2 * pick + 2);
    }
    CHECK(highest > 0);
    CHECK(between == near(highest, 1e-9));
}

TEST_CASE("woven yarn shown is ends and picks across the window") {
    const auto strands = weave("x-/-x");
    CHECK(yarn_shown(strands, 16, 16) == near(2 * 8 * 16, 0.01));
    CHECK(yarn_shown(strands, 0, 0) == 0);
}
