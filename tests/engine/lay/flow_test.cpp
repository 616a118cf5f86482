// How knitted cloth bends: lace waves, ribs and welts stand out, long rows are tall.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/lay/flow.hpp"
#include "engine/lay/knitted.hpp"
#include "tests/engine/lay/plain.hpp"

using namespace gristwright::lay;

namespace {

struct Heights {
    double nearest = -9, deepest = 9;
};

// Of all that lies between two places, across and up, in stitches and rows.
Heights heights(const std::vector<Strand>& cloth, double x0, double x1, double y0, double y1) {
    Heights out;
    for (const auto& strand : cloth)
        for (const auto& p : strand.line)
            if (p.x > x0 * plain.stitch && p.x < x1 * plain.stitch && p.y > y0 * plain.row &&
                p.y < y1 * plain.row)
                out = {std::max(out.nearest, p.z), std::min(out.deepest, p.z)};
    return out;
}

std::vector<Strand> knit(const char* chart) {
    return knitted(read_chart(chart, stitch_letters), plain, 48, 48);
}

}  // namespace

TEST_CASE("chevrons dip where three are taken together and rise where stitches are made") {
    const auto chart = read_chart("kkkkkkkkkkkk/okkkkckkkkok", stitch_letters);
    const Flow flow(chart);
    CHECK(flow.carried(2, -1) == 1);
    CHECK(flow.carried(8, -1) == -1);
    CHECK(flow.carried(2, 0) == 0);  // the plain row carries nothing
    for (int wale = 0; wale < 12; ++wale) {
        CHECK(flow.rise(5, 1) <= flow.rise(wale, 1));
        CHECK(flow.rise(11, 1) >= flow.rise(wale, 1) - 0.5);
    }
    CHECK(flow.rise(12, 1) == doctest::Approx(flow.rise(0, 1)));
}

TEST_CASE("a row that works more or fewer loops than there are is not carried by guesswork") {
    const auto chart = read_chart("kkkk/okkk", stitch_letters);
    for (int wale = 0; wale < 4; ++wale) CHECK(Flow(chart).carried(wale, -1) == 0);
    const auto stocking = read_chart("k", stitch_letters);
    CHECK(Flow(stocking).rise(0, 1) == 0);
    CHECK(Flow(stocking).leans(0, 0) == 0);
}

TEST_CASE("a rib's knit wales stand before its purled ones, a welt's purled rows before its knit") {
    const auto rib = knit("kkkpppp");  // purled wales are narrower
    const double knit_wale = heights(rib, 1, 2, 2, 8).nearest;
    double purled_wale = 9;
    for (double x = 4; x < 7; x += 0.5)
        purled_wale = std::min(purled_wale, heights(rib, x, x + 0.5, 2, 8).nearest);
    CHECK(knit_wale > purled_wale + 0.4);
    const auto welt = knit("p/p/p/p/k/k/k/k");
    CHECK(heights(welt, 2, 6, 5.5, 7.5).nearest > heights(welt, 2, 6, 2, 3).nearest + 0.4);
}

TEST_CASE("where a stitch is knit and the next above it purled its legs change sides") {
    // Low down they lie before the head that they come through, high up behind the purl's foot.
    const auto row = knit("kp/pk")[3 + 4].line;
    const auto loop = row.size() / (12 + 8 + 4);  // spots of a stitch
    const auto* wale = &row[loop * (2 + 4)];
    CHECK(wale[loop / 6].z > 0.3);
    CHECK(wale[loop / 3].z < -0.3);
    const auto stocking = knit("k")[3 + 4].line;
    CHECK(stocking[loop * 6 + loop / 4].z > 0.3);
}

TEST_CASE("a row of loops wrapped twice is taller, and the repeat keeps its height") {
    const auto rows = knit("e/k/k/k");
    const auto foot = [&](int row) { return rows[static_cast<std::size_t>(row + 4)].line[0].y; };
    CHECK(foot(4) - foot(3) > 1.8 * (foot(2) - foot(1)));
    CHECK(foot(4) - foot(0) == doctest::Approx(4 * plain.row));
}
