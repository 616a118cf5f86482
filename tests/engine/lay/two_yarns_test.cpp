#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/lay/colour_order.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/relief.hpp"
#include "engine/lay/woven.hpp"
#include "engine/units/failure.hpp"
#include "tests/engine/lay/plain.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::lay;

namespace {

constexpr Colour white{0.9, 0.9, 0.9}, black{0.1, 0.1, 0.1};

std::array<Fibres, 2> white_and_black(double thickness) {
    Fibres one, two;
    one.thickness = two.thickness = thickness;
    one.colours = {white}, two.colours = {black};
    return {one, two};
}

// Share of light pixels in a window of a relief that yarn wholly hides.
double light(const Picture& picture, int x0, int x1, int y0, int y1) {
    int bright = 0;
    for (int y = y0; y < y1; ++y)
        for (int x = x0; x < x1; ++x)
            bright += picture.rgb[3 * static_cast<std::size_t>(y * picture.width + x)] > 60 ? 1 : 0;
    return double(bright) / ((x1 - x0) * (y1 - y0));
}

}  // namespace

TEST_CASE("an order of colours repeats for ever, and is written in 1 and 2") {
    const auto rows = read_rows_of_colour("1122");
    CHECK(rows.two());
    CHECK(rows.row(0) == 0);
    CHECK(rows.row(2) == 1);
    CHECK(rows.row(-1) == 1);
    CHECK(rows.row(8) == 0);
    const auto threads = read_threads_of_colour("12/2");
    CHECK(threads.end(1) == 1);
    CHECK(threads.pick(5) == 1);
    CHECK_FALSE(read_rows_of_colour("").two());
    CHECK_THROWS_AS((void)read_rows_of_colour("1123"), Refused);
    CHECK_THROWS_AS((void)read_threads_of_colour("1122"), Refused);
    CHECK_THROWS_AS((void)read_threads_of_colour("12/"), Refused);
}

TEST_CASE("rows of two yarns are strands of two yarns, a slipped stitch keeps its own") {
    const auto chart = read_chart("ks/ks/kk/kk", stitch_letters);
    double first = -1, second = -1;  // the highest places of each yarn's rows 1 and 3
    for (const auto& strand : knitted(chart, thick_plain, 16, 12, read_rows_of_colour("1122"))) {
        const auto top = std::max_element(strand.line.begin(), strand.line.end(),
                                          [](const Spot& a, const Spot& b) { return a.y < b.y; })
                             ->y;
        if (std::abs(strand.line.front().y - thick_plain.row) < 1) {
            CHECK(strand.yarn == 0);
            first = std::max(first, top);
        }
        if (std::abs(strand.line.front().y - 3 * thick_plain.row) < 1) {
            CHECK(strand.yarn == 1);
            second = std::max(second, top);
        }
    }
    CHECK(first > 4 * thick_plain.row);  // through the two rows of the other yarn
    CHECK(second < 6 * thick_plain.row);
}

TEST_CASE("log cabin: one block is striped along, the next across, both of the same two yarns") {
    const auto order = read_threads_of_colour("12122121/12122121");
    const auto strands = woven(read_chart("x-/-x", weave_letters), 1, 1, 0.9, 32, 32, order);
    const auto count = [&](int yarn) {
        return std::count_if(strands.begin(), strands.end(),
                             [&](const Strand& s) { return s.yarn == yarn; });
    };
    CHECK(count(0) == near(double(count(1)), 2.1));
    // Houndstooth: a third of its face and more is either yarn.
    const auto tooth = woven(read_chart("x--x/--xx/-xx-/xx--", weave_letters), 1, 1, 1.1, 32, 32,
                             read_threads_of_colour("11112222/11112222"));
    const auto picture = relief(tooth, white_and_black(1.1), {32, 32, 10});
    CHECK(light(picture, 0, 320, 0, 320) == near(0.5, 0.15));
}

TEST_CASE("of two cloths woven one over the other only the upper one is seen") {
    const auto chart = read_chart("x-xx/--x-/xxx-/x---", weave_letters);
    const auto strands = woven(chart, 0.5, 0.5, 0.9, 20, 20, read_threads_of_colour("12/12"));
    double upper = -9, lower = -9;
    for (const auto& strand : strands)
        for (const auto& spot : strand.line)
            (strand.yarn == 0 ? upper : lower) = std::max(strand.yarn == 0 ? upper : lower, spot.z);
    CHECK(lower < upper - 0.9);
    const auto picture = relief(strands, white_and_black(0.9), {20, 20, 10});
    CHECK(light(picture, 20, 180, 20, 180) > 0.8);
}

TEST_CASE("three stitches made in one bulge between the rows that make and close them") {
    double bulge = 0, deep = 0;
    const auto strands =
        knitted(read_chart("zmmm/pppp/mmmz/pppp", stitch_letters), thick_plain, 40, 30);
    for (const auto& strand : strands)
        for (const auto& spot : strand.line)
            bulge = std::max(bulge, spot.z), deep = std::min(deep, spot.z);
    double flat = 0;
    for (const auto& strand : knitted(read_chart("p", stitch_letters), thick_plain, 40, 30))
        for (const auto& spot : strand.line) flat = std::max(flat, spot.z);
    CHECK(bulge > flat + 0.5 * thick_plain.thickness);
    CHECK(deep < -0.5 * thick_plain.thickness);
}

TEST_CASE("cloth that is fulled hard is closed and shows little of its stitches") {
    auto open = white_and_black(1.4);
    auto fulled = open;
    fulled[0].felted = fulled[1].felted = 1;
    const auto strands = knitted(read_chart("k", stitch_letters), thick_plain, 40, 30);
    const View view{40, 30, 8};
    CHECK(contrast(relief(strands, fulled, view), 0.2) <
          0.5 * contrast(relief(strands, open, view), 0.2));
}
