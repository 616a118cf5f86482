// Each shape as it is drawn, against what the engine says it measures.
#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

#include "cli/output/schematic.hpp"
#include "tests/cli/drawing.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;

namespace {

const Outline shapes[] = {
    {Shape::rectangle, centimetres(40), centimetres(150), {}},
    {Shape::tube, centimetres(52), centimetres(24), {}},
    {Shape::triangle, centimetres(150), centimetres(75), {}},
    {Shape::bias_triangle, centimetres(90), centimetres(90), {}},
    {Shape::half_circle, centimetres(160), centimetres(80), {}},
    {Shape::crescent, centimetres(180), centimetres(45), {}},
    {Shape::square_from_corner, centimetres(100), centimetres(100), {}},
    {Shape::circle, centimetres(60), centimetres(60), {}},
    {Shape::cap, centimetres(56), centimetres(22), {}},
    {Shape::taper, centimetres(34), centimetres(45), centimetres(20)},
};

constexpr Point corner{16, 40};
constexpr double scale = 2.5;  // units to the cm

Flat box_of(const Outline& o) {
    const auto size = flat(o);
    return {size.width * scale, size.height * scale};
}

std::vector<Point> drawn(const Outline& o) {
    return drawing::along(outline_path(o, corner, box_of(o)).text());
}

bool folded(const Outline& o) { return o.shape == Shape::tube || o.shape == Shape::cap; }

// A cap's crown is drawn as the dome it makes on a head, fuller than its wedges are (judgement).
double drawn_as_it_is(const Outline& o) { return o.shape == Shape::cap ? 0.25 : 0.005; }

// The part of the outline on the worked side of a row, by counting small squares: those whose place
// along the work comes before `t`.
double worked_share(const Outline& o, double t) {
    const auto size = flat(o);
    const double half = size.width / 2;
    const auto place = [&](double x, double y) {  // from the upper left corner, in cm
        switch (o.shape) {
            case Shape::triangle:
                return std::abs(x - half) / half + y / size.height;
            case Shape::bias_triangle:
                return x / size.width;
            case Shape::half_circle:
                return std::hypot(x - half, y) / half;
            case Shape::circle:
                return std::hypot(x - half, y - half) / half;
            case Shape::crescent:
                return y / size.height;
            default:
                return 1 - y / size.height;
        }
    };
    const auto outline = drawing::along(outline_path(o, {0, 0}, size).text());
    const auto within = [&](double x, double y) {
        bool in = false;
        for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            const auto &a = outline[i], &b = outline[j];
            if ((a.y > y) != (b.y > y) && x < (b.x - a.x) * (y - a.y) / (b.y - a.y) + a.x) in = !in;
        }
        return in;
    };
    constexpr int fine = 120;
    int all = 0, worked = 0;
    for (int i = 0; i < fine; ++i)
        for (int j = 0; j < fine; ++j) {
            const double x = size.width * (i + 0.5) / fine, y = size.height * (j + 0.5) / fine;
            if (!within(x, y)) continue;
            ++all;
            worked += place(x, y) < t ? 1 : 0;
        }
    return double(worked) / all;
}

}  // namespace

TEST_CASE("a shape is drawn as large as it is, within its box") {
    for (const auto& o : shapes) {
        INFO(words(o.shape));
        const auto outline = drawn(o);
        const double cm2 = drawing::area(outline) / (scale * scale);
        CHECK(cm2 * (folded(o) ? 2 : 1) == near(area(o).si() * 1e4, drawn_as_it_is(o)));
        const auto box = box_of(o);
        for (const auto& p : outline) {
            CHECK(p.x >= corner.x - 0.01);
            CHECK(p.y >= corner.y - 0.01);
            CHECK(p.x <= corner.x + box.width + 0.01);
            CHECK(p.y <= corner.y + box.height + 0.01);
        }
    }
}

TEST_CASE("a shape fills its box from side to side and from top to bottom") {
    for (const auto& o : shapes) {
        INFO(words(o.shape));
        const auto box = box_of(o);
        double left = 1e9, right = 0, top = 1e9, bottom = 0;
        for (const auto& p : drawn(o)) {
            left = std::min(left, p.x), right = std::max(right, p.x);
            top = std::min(top, p.y), bottom = std::max(bottom, p.y);
        }
        CHECK(right - left == near(box.width, 0.002));
        CHECK(bottom - top == near(box.height, 0.002));
    }
}

TEST_CASE("the line of work begins and ends on the outline, whatever is worked") {
    for (const auto& o : shapes)
        for (const double t : {0.05, 0.25, 0.5, 0.75, 0.95}) {
            INFO(words(o.shape), " ", t);
            const auto row = drawing::along(row_line(o, corner, box_of(o), t).text());
            if (o.shape == Shape::circle) continue;  // its rows go round inside it
            const double slack = o.shape == Shape::cap ? 0.12 * box_of(o).width : 0.05;
            CHECK(drawing::distance(row.front(), drawn(o)) <= slack);
            CHECK(drawing::distance(row.back(), drawn(o)) <= slack);
        }
}

TEST_CASE("what lies before the line of work is the share of yarn that the engine says is used") {
    for (const auto& o : shapes) {
        if (o.shape == Shape::cap) continue;  // its crown is drawn, not measured
        for (const double t : {0.2, 0.5, 0.8}) {
            INFO(words(o.shape), " ", t);
            CHECK(std::abs(worked_share(o, t) - yarn_after_rows(o, t)) < 0.02);
        }
    }
}

TEST_CASE("the arrow of the work lies inside the shape and points onwards") {
    for (const auto& o : shapes) {
        INFO(words(o.shape));
        const auto box = box_of(o);
        const auto arrow = drawing::along(work_arrow(o, corner, box).text());
        REQUIRE(arrow.size() == 5);
        const auto from = arrow[0], to = arrow[1];
        CHECK(std::hypot(to.x - from.x, to.y - from.y) > 0.3 * std::min(box.width, box.height));
        for (const double barb : {2, 4})
            CHECK(std::hypot(arrow[std::size_t(barb)].x - to.x,
                             arrow[std::size_t(barb)].y - to.y) == near(6, 0.01));
        CHECK(arrow[3].x == to.x);
        for (const auto& p : {from, to}) {
            CHECK((p.x > corner.x && p.x < corner.x + box.width));
            CHECK((p.y > corner.y && p.y < corner.y + box.height));
        }
    }
}

TEST_CASE("what is knitted round lies flat at half its width, a corner square on its corner") {
    CHECK(flat(shapes[1]).width == near(26, 1e-12));
    CHECK(flat(shapes[8]).width == near(28, 1e-12));
    CHECK(flat(shapes[2]).height == near(75, 1e-12));
    CHECK(flat(shapes[6]).width == near(100 * std::numbers::sqrt2, 1e-12));
}
