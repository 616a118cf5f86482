// Shawls: an edge goes round the side that it is worked along.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "cli/output/laying.hpp"

namespace gristwright::cli {
namespace {

// The outer side of a body, from one end of its top edge to the other; of a circle all of it.
Line rim_of(const PlanPiece& body, Flat size) {
    const auto& o = body.outline;
    return o.shape == Shape::triangle ? row_line(o, {0, 0}, size, 1).along()
                                      : outline_path(o, {0, 0}, size).along();
}

// The rim `wide` further out from where the work began.
Line farther(const Line& rim, const PlanPiece& body, Flat size, double wide) {
    const bool round = body.outline.shape == Shape::circle;
    const bool straight = body.outline.shape == Shape::triangle;
    const Point from{size.width / 2, round ? size.height / 2 : 0};
    const double out = straight ? wide * std::numbers::sqrt2 : wide;
    const double x = 1 + out / (size.width / 2);
    const double y = 1 + out / (round ? size.height / 2 : size.height);
    Line moved;
    for (const auto& p : rim)
        moved.push_back({from.x + x * (p.x - from.x), from.y + y * (p.y - from.y)});
    return moved;
}

// Four borders round a square, and an edging round them.
void lay_hap(Laying& laying, const PlanPiece& middle) {
    const auto size = flat(middle.outline), border = laying.size("border");
    laying.lay(middle, size, standing(size, {0, size.height / 2}));
    const double reach = size.height / 2 + border.height;
    for (int i = 0; i < 4; ++i) {
        const double turn = i * std::numbers::pi / 2;
        if (const auto* p = laying.next("border"))
            laying
                .lay(*p, border,
                     standing(border, {-reach * std::sin(turn), reach * std::cos(turn)}, turn))
                .backwards = true;
    }
    const auto square = [](double half) {
        return Line{{-half, -half}, {half, -half}, {half, half}, {-half, half}, {-half, -half}};
    };
    if (const auto* p = laying.next("edging"))
        laying.lay_between(*p, square(reach), square(reach + laying.size("edging").height));
}

}  // namespace

void lay_with_edge(Laying& laying) {
    if (const auto* middle = laying.next("middle")) return lay_hap(laying, *middle);
    const auto* body = laying.next("body");
    if (!body) return;
    const auto size = flat(body->outline);
    laying.lay(*body, size, {});
    const auto* edge = laying.next("edge");
    if (!edge) return;
    const auto rim = rim_of(*body, size);
    laying.lay_between(*edge, rim, farther(rim, *body, size, flat(edge->outline).height));
}

}  // namespace gristwright::cli
