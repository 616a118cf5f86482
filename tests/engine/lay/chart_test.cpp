#include <doctest/doctest.h>

#include <stdexcept>

#include "engine/lay/chart.hpp"
#include "engine/lay/draft.hpp"

using namespace gristwright::lay;

TEST_CASE("a chart is read from the top and counted from the bottom") {
    const auto chart = read_chart("kp/pp/kk", stitch_letters);
    CHECK(chart.across() == 2);
    CHECK(chart.up() == 3);
    CHECK(chart.at(0, 0) == 'k');
    CHECK(chart.at(1, 2) == 'p');
    CHECK(chart.at(-1, -1) == 'p');  // repeats downwards and to the left too
    CHECK(chart.at(3, 5) == 'p');
}

TEST_CASE("a chart that is none is refused") {
    for (const auto* bad : {"", "kp/k", "kw", "k/", "/k"})
        CHECK_THROWS_AS(read_chart(bad, stitch_letters), std::invalid_argument);
    CHECK_THROWS_AS(read_chart("xk", weave_letters), std::invalid_argument);
}

TEST_CASE("intersections of a weave as Ashenhurst counts them") {
    CHECK(intersections(read_chart("x-/-x", weave_letters)) == 2);
    CHECK(intersections(read_chart("x--x/--xx/-xx-/xx--", weave_letters)) == 2);
}
