// What is worn on the body, on hands and on feet.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "cli/output/laying.hpp"

namespace gristwright::cli {
namespace {

constexpr double quarter = std::numbers::pi / 2;
constexpr double arm_hangs = 50 * std::numbers::pi / 180;  // below the level, laid flat

// Half of what goes round: how a tube, and a taper of a garment, lies.
Flat folded(const PlanPiece& p) {
    return {in_centimetres(p.outline.width) / 2, in_centimetres(p.outline.length)};
}

struct Sleeve {
    Point base, end;  // the middle of its upper edge and of its lower one
    Line upper;       // from the shoulder to the underarm
    double turn = 0;
};

Sleeve sleeve_at(double half_body, double underarm, Flat size) {
    const double c = std::cos(arm_hangs), s = std::sin(arm_hangs);
    const Point under{half_body, underarm};
    const Point shoulder{under.x + s * size.width, under.y - c * size.width};
    const Point base{(under.x + shoulder.x) / 2, (under.y + shoulder.y) / 2};
    return {base,
            {base.x + c * size.height, base.y + s * size.height},
            {shoulder, under},
            quarter + arm_hangs};
}

// The parts of a yoke, each a band between the body and the neck.
void lay_yoke(Laying& laying, const Sleeve& sleeve) {
    std::vector<const PlanPiece*> bands;
    double height = 0, neck = 0;
    for (const char* name : {"yoke", "yoke ground", "yoke pattern", "upper yoke"})
        if (const auto* p = laying.next(name)) {
            bands.push_back(p);
            height += in_centimetres(p->outline.length);
            neck = in_centimetres(p->outline.narrow) / 4;  // half of what lies flat
        }
    const Point shoulder = sleeve.upper[0], under = sleeve.upper[1];
    const auto at = [&](double t) {
        const auto mix = [&](Point a, Point b) {
            return Point{a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)};
        };
        const auto left = [](Point p) { return Point{-p.x, p.y}; };
        const Point outer{neck, -height}, inner{neck / 3, -height};
        return Line{mix(left(shoulder), left(outer)), mix(left(under), left(inner)),
                    mix(under, inner), mix(shoulder, outer)};
    };
    double done = 0;
    for (const auto* p : bands) {
        const double next = done + in_centimetres(p->outline.length) / height;
        laying.lay_between(*p, at(done), at(next)).backwards = p->piece->narrow_first;
        done = next;
    }
}

void lay_sleeves(Laying& laying, const Sleeve& sleeve, bool from_shoulder) {
    for (const bool left : {false, true}) {
        const auto mirror = [&](Point p) { return Point{left ? -p.x : p.x, p.y}; };
        const auto add = [&](const PlanPiece* p, Point foot) {
            if (!p) return;
            const auto size = folded(*p);
            laying.lay(*p, size, standing(size, mirror(foot), sleeve.turn, left)).backwards =
                !from_shoulder;
        };
        if (from_shoulder) add(laying.next("sleeve"), sleeve.base);
        add(laying.next("cuff"), sleeve.end);
        if (!from_shoulder) add(laying.next("sleeve"), sleeve.base);
    }
}

// Strips along both fronts of a cardigan.
void lay_front_bands(Laying& laying, double top, double bottom) {
    for (const bool left : {false, true})
        if (const auto* p = laying.next("front band")) {
            const auto size = flat(p->outline);
            laying.lay(*p, size, standing(size, {0, (top + bottom) / 2}, quarter, left)).layer = 1;
        }
}

// The hem hangs below the body; whichever is worked first is laid first.
void lay_body(Laying& laying, bool downwards) {
    const auto* body = laying.next("body");
    const auto* hem = laying.next("hem");
    const double length = folded(*body).height;
    const auto lay = [&](const PlanPiece* p, double foot) {
        if (p) laying.lay(*p, folded(*p), standing(folded(*p), {0, foot})).backwards = downwards;
    };
    if (downwards) lay(body, length);
    lay(hem, length + laying.size("hem").height);
    if (!downwards) lay(body, length);
}

struct Side {
    double sign, middle;  // of one of a pair
    bool mirrored;

    Point at(Point p) const { return {middle + sign * p.x, p.y}; }
};

std::vector<Side> pair_apart(double half_width) {
    return {{1, half_width, false}, {-1, -half_width, true}};
}

void lay_fingers(Laying& laying, const Side& side, Flat hand, double top) {
    for (int i = 0; i < 4; ++i) {
        const auto* p = laying.next("finger");
        if (!p) return;
        const auto size = flat(p->outline);
        const double off = (i - 1.5) / 4;
        laying.lay(*p, size,
                   standing(size, side.at({off * hand.width, top}), 0.55 * off, side.mirrored));
    }
}

void lay_hand(Laying& laying, const Side& side) {
    const auto hand = laying.size("hand"), thumb = laying.size("thumb");
    const double top = laying.stack({"wrist", "hand", "pattern"}, side.at({0, 0}));
    lay_fingers(laying, side, hand, top);
    const double palm = -laying.size("wrist").height;
    const auto gusset = laying.size("thumb gusset");
    const double edge = hand.width / 2;
    if (const auto* p = laying.next("thumb gusset")) {
        auto& placed =
            laying.lay_between(*p,
                               {side.at({edge - 0.01, palm - gusset.height}),
                                side.at({edge + gusset.width / 2, palm - gusset.height})},
                               {side.at({edge - 0.01, palm}), side.at({edge, palm})});
        placed.backwards = true;
        placed.layer = -1;
    }
    const bool inset = gusset.height > 0;
    const Point root{inset ? edge + gusset.width / 4 : edge - thumb.width / 3,
                     palm - (inset ? gusset.height : thumb.height)};
    if (const auto* p = laying.next("thumb"))
        laying.lay(*p, thumb, standing(thumb, side.at(root), inset ? 0.3 : 0.6, side.mirrored))
            .layer = -2;
}

// Leg above, heel behind below it, the foot forward; the toe points away from the middle.
void lay_foot(Laying& laying, const Side& side) {
    const double wide = std::max(laying.size("leg").width, laying.size("foot").width);
    const auto heel = laying.size("heel"), foot = laying.size("foot"),
               gusset = laying.size("gusset");
    // The turn goes round from behind to below: half of its rows stand.
    const double behind = heel.width / 2, flap = heel.height,
                 sole = flap + laying.size("heel turn").height / 2;
    const bool turned = sole > flap;
    const auto lay = [&](const char* name, Point at, double turn, int layer) {
        const auto* p = laying.next(name);
        if (!p) return;
        const auto size = flat(p->outline);
        laying.lay(*p, size, standing(size, side.at(at), turn, side.mirrored)).layer = layer;
    };
    lay("cuff", {wide / 2, -laying.size("leg").height}, 0, 1);
    lay("leg", {wide / 2, 0}, 0, 1);
    const auto shape = [&](const char* name, const Line& from, const Line& to) {
        const auto* p = laying.next(name);
        if (!p) return;
        Line a, b;
        for (const auto& q : from) a.push_back(side.at(q));
        for (const auto& q : to) b.push_back(side.at(q));
        auto& placed = laying.lay_between(*p, a, b);
        placed.layer = 1;
        placed.backwards = p->piece->narrow_first;
    };
    shape("heel", {{0, 0}, {behind, 0}}, {{turned ? 0 : behind * 0.3, flap}, {behind, flap}});
    shape("heel turn", {{behind * 0.3, sole}, {behind, sole}}, {{0, flap}, {behind, flap}});
    shape("gusset", {{behind, 0}, {behind, sole}},
          {{behind + 0.01, 0}, {behind + gusset.height, sole}});
    lay("foot", {behind, sole - foot.width / 2}, quarter, 0);
    lay("toe", {behind + foot.height, sole - foot.width / 2}, quarter, 0);
}

// Without a leg: a sole with the ankle over its back and the instep over its front.
void lay_bootee(Laying& laying, const Side& side) {
    const auto sole = laying.size("sole"), cuff = laying.size("cuff"),
               instep = laying.size("instep");
    const Flat half{sole.width / 2, sole.height};
    if (const auto* p = laying.next("cuff"))
        laying.lay(*p, cuff,
                   standing(cuff, side.at({cuff.width / 2, -sole.height}), 0, side.mirrored));
    if (const auto* p = laying.next("instep"))
        laying.lay(*p, instep,
                   standing(instep, side.at({cuff.width, -sole.height / 2 - instep.width / 2}),
                            quarter, side.mirrored));
    if (const auto* p = laying.next("sole"))
        laying.lay(*p, half, standing(half, side.at({half.width / 2, 0}), 0, side.mirrored)).layer =
            1;
}

}  // namespace

void lay_worn_on_body(Laying& laying) {
    const auto* body = laying.next("body");
    const auto* arm = laying.next("sleeve");
    if (!body || !arm) return;
    const auto* yoke = laying.next("yoke") ? laying.next("yoke") : laying.next("yoke ground");
    const bool yoked = yoke != nullptr;
    const bool downwards = yoked && yoke->piece->narrow_first;
    const double underarm = yoked ? 3 : folded(*arm).width;
    const auto sleeve = sleeve_at(folded(*body).width / 2, underarm, folded(*arm));
    double top = 0;
    for (const auto& p : laying.plan().pieces)
        if (p.outline.shape == Shape::taper && p.piece->name != "sleeve")
            top -= in_centimetres(p.outline.length);
    const double hem = folded(*body).height + laying.size("hem").height;
    if (downwards) lay_yoke(laying, sleeve);
    lay_body(laying, downwards);
    lay_sleeves(laying, sleeve, downwards);
    if (!downwards) lay_yoke(laying, sleeve);
    if (const auto* band = laying.next("neck band"))
        laying.lay(*band, folded(*band), standing(folded(*band), {0, top}));
    lay_front_bands(laying, top, hem);
}

void lay_front_and_back(Laying& laying) {
    const double apart = laying.size("front").width + 6;
    const double top = laying.stack({"hem", "front", "upper front"}, {0, 0});
    laying.stack({"hem", "back", "upper back"}, {apart, 0});
    if (const auto* band = laying.next("neck band"))
        laying.lay(*band, flat(band->outline), standing(flat(band->outline), {0, top}));
}

void lay_pair_of_hands(Laying& laying) {
    const double half = laying.size("hand").width / 2 + laying.size("thumb").height;
    for (const auto& side : pair_apart(half)) lay_hand(laying, side);
}

void lay_pair_of_feet(Laying& laying) {
    const bool bootee = laying.next("sole") != nullptr;
    for (const auto& side : pair_apart(2))
        bootee ? lay_bootee(laying, side) : lay_foot(laying, side);
}

}  // namespace gristwright::cli
