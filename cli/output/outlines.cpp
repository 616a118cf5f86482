// Each shape of engine/project/shape.hpp as lines. Work grows as yarn_after_rows says it does: from
// a point, a middle, an edge.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "cli/output/schematic.hpp"

namespace gristwright::cli {
namespace {

struct Box {
    double left, top, width, height;

    double middle() const { return left + width / 2; }
    double right() const { return left + width; }
    double bottom() const { return top + height; }
};

Box box_of(Point corner, Flat flat) { return {corner.x, corner.y, flat.width, flat.height}; }

Path level(const Box& b, double y, double half) {
    return Path().move({b.middle() - half, y}).line({b.middle() + half, y});
}

Path circle(Point centre, double r) {
    return Path()
        .move({centre.x - r, centre.y})
        .arc(r, {centre.x + r, centre.y}, true)
        .arc(r, {centre.x - r, centre.y}, true)
        .close();
}

// Where the crown begins, as a share of the height from the brim.
double crown_begins(const Outline& o) { return 1 - crown_of(o); }

Path cap(const Outline& o, const Box& b) {
    const double shoulder = b.bottom() - b.height * crown_begins(o);
    return Path()
        .move({b.left, b.bottom()})
        .line({b.left, shoulder})
        .curve({b.left, b.top}, {b.middle() - b.width / 4, b.top}, {b.middle(), b.top})
        .curve({b.middle() + b.width / 4, b.top}, {b.right(), b.top}, {b.right(), shoulder})
        .line({b.right(), b.bottom()})
        .close();
}

Path four(Point a, Point b, Point c, Point d) {
    return Path().move(a).line(b).line(c).line(d).close();
}

Path three(Point a, Point b, Point c) { return Path().move(a).line(b).line(c).close(); }

// The chord above, the parabola below: its control point lies twice as deep.
Path crescent(const Box& b) {
    const double deep = b.top + b.height * 4 / 3;
    return Path()
        .move({b.left, b.top})
        .curve({b.left + b.width / 3, deep}, {b.right() - b.width / 3, deep}, {b.right(), b.top})
        .close();
}

double narrow_share(const Outline& o) { return o.narrow / o.width; }

Path arrow(Point from, Point to) {
    const double angle = std::atan2(to.y - from.y, to.x - from.x);
    const auto barb = [&](double turn) {
        return Point{to.x - 6 * std::cos(angle + turn), to.y - 6 * std::sin(angle + turn)};
    };
    return Path().move(from).line(to).move(barb(0.5)).line(to).line(barb(-0.5));
}

}  // namespace

Flat flat(const Outline& o) {
    const double w = in_centimetres(o.width), l = in_centimetres(o.length);
    switch (o.shape) {
        case Shape::tube:
        case Shape::cap:
            return {w / 2, l};
        case Shape::triangle:
        case Shape::half_circle:
            return {w, w / 2};
        case Shape::bias_triangle:
        case Shape::circle:
            return {w, w};
        case Shape::square_from_corner:
            return {w * std::numbers::sqrt2, w * std::numbers::sqrt2};
        default:
            return {w, l};
    }
}

Path outline_path(const Outline& o, Point corner, Flat size) {
    const auto b = box_of(corner, size);
    switch (o.shape) {
        case Shape::triangle:
            return three({b.left, b.top}, {b.right(), b.top}, {b.middle(), b.bottom()});
        case Shape::bias_triangle:
            return three({b.left, b.bottom()}, {b.right(), b.top}, {b.right(), b.bottom()});
        case Shape::half_circle:
            return Path().move({b.left, b.top}).arc(b.height, {b.right(), b.top}, false).close();
        case Shape::crescent:
            return crescent(b);
        case Shape::square_from_corner:
            return four({b.middle(), b.bottom()}, {b.left, b.top + b.height / 2},
                        {b.middle(), b.top}, {b.right(), b.top + b.height / 2});
        case Shape::circle:
            return circle({b.middle(), b.top + b.height / 2}, b.width / 2);
        case Shape::cap:
            return cap(o, b);
        case Shape::taper: {
            const double half = b.width / 2 * narrow_share(o);
            return four({b.left, b.bottom()}, {b.middle() - half, b.top},
                        {b.middle() + half, b.top}, {b.right(), b.bottom()});
        }
        default:
            return four({b.left, b.bottom()}, {b.left, b.top}, {b.right(), b.top},
                        {b.right(), b.bottom()});
    }
}

Path row_line(const Outline& o, Point corner, Flat size, double t) {
    const auto b = box_of(corner, size);
    const double up = b.bottom() - t * b.height, half = b.width / 2;
    switch (o.shape) {
        case Shape::triangle:
            return Path()
                .move({b.middle() - t * half, b.top})
                .line({b.middle(), b.top + t * b.height})
                .line({b.middle() + t * half, b.top});
        case Shape::bias_triangle:
            return Path()
                .move({b.left + t * b.width, b.bottom()})
                .line({b.left + t * b.width, b.bottom() - t * b.height});
        case Shape::half_circle:
            return Path()
                .move({b.middle() - t * half, b.top})
                .arc(t * half, {b.middle() + t * half, b.top}, false);
        case Shape::crescent:
            return level(b, b.top + t * b.height, half * std::sqrt(1 - t));
        case Shape::square_from_corner:
            return level(b, up, b.width * std::min(t, 1 - t));
        case Shape::circle:
            return circle({b.middle(), b.top + b.height / 2}, t * half);
        case Shape::taper:
            return level(b, up, half * (1 - t * (1 - narrow_share(o))));
        case Shape::cap: {
            const double crown = crown_begins(o);
            return level(b, up, t <= crown ? half : half * std::sqrt((1 - t) / (1 - crown)));
        }
        default:
            return level(b, up, half);
    }
}

Path work_arrow(const Outline& o, Point corner, Flat size) {
    const auto b = box_of(corner, size);
    const double centre = b.top + b.height / 2;
    switch (o.shape) {
        case Shape::triangle:
        case Shape::half_circle:
        case Shape::crescent:
            return arrow({b.middle(), b.top + 0.15 * b.height},
                         {b.middle(), b.top + 0.75 * b.height});
        case Shape::bias_triangle:
            return arrow({b.left + 0.3 * b.width, b.bottom() - 0.12 * b.height},
                         {b.left + 0.8 * b.width, b.bottom() - 0.12 * b.height});
        case Shape::circle:
            return arrow({b.middle(), centre}, {b.middle() + 0.4 * b.width, centre});
        default:
            return arrow({b.middle(), b.bottom() - 0.2 * b.height},
                         {b.middle(), b.top + 0.25 * b.height});
    }
}

}  // namespace gristwright::cli
