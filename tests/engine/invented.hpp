// Invented yarns and articles for the engine's tests, stated outright instead of measured.
#pragma once

#include <memory>

#include "engine/cloth/sett.hpp"
#include "engine/project/plan.hpp"

namespace invented {

using namespace gristwright;

// What a test still means to change after a plan holds it: looked at where it stands.
template <class T>
std::shared_ptr<const T> lent(const T& it) {
    return {std::shared_ptr<const T>{}, &it};
}

// A yarn of so many metres and tex, called fine, every trait in the middle, its wraps unknown.
inline YarnProfile yarn(double metres_to_hand, double in_tex, double length_spread = 0.02) {
    YarnProfile out;
    out.length = {metres(metres_to_hand), length_spread};
    out.linear_density = {tex(in_tex), 0.02};
    out.mass = out.length.mid * out.linear_density.mid;
    out.packed_diameter = packed_diameter(tex(in_tex), ashenhurst(SpunAs::woollen));
    for (auto& trait : out.traits) trait = {0.5, 0.1, {}};
    out.felting = "medium";  // of a fibre that is known
    out.class_by_grist.resize(1);
    out.class_by_grist[0].number = 2;
    return out;
}

inline Fabrics fabrics() {
    Fabrics out;
    KnitFabric plain;
    plain.name = "plain";
    KnitFabric lace;
    lace.name = "lace";
    lace.growth = 1.5, lace.growth_low = 1.3, lace.growth_high = 1.7;
    lace.stitch_repeat = 10, lace.row_repeat = 8;
    out.knitted = {plain, lace};
    Weave tabby, twill;
    tabby.name = "tabby";
    twill.name = "twill";
    twill.interlacing = twill_2_2;
    twill.shafts = 4, twill.end_repeat = twill.pick_repeat = 4;
    out.weaves = {tabby, twill};
    return out;
}

inline PieceTemplate piece(const char* fabric, double width_cm, double length_cm, Grows grows) {
    PieceTemplate out;
    out.name = "body";
    out.fabric = fabric;
    out.outline = {Shape::rectangle, centimetres(width_cm), centimetres(length_cm), {}};
    out.grows = grows;
    return out;
}

// Measured by its length: 60 to 300 cm, 180 ideal.
inline Template article(Craft craft, PieceTemplate body) {
    Template out;
    out.name = out.article = "scarf";
    out.craft = craft;
    out.measure = "length";
    out.smallest = centimetres(60), out.ideal = centimetres(180), out.largest = centimetres(300);
    out.pieces = {std::move(body)};
    if (craft == Craft::woven) out.fringe = centimetres(10), out.loom_waste = centimetres(50);
    return out;
}

inline Template knitted_scarf() {
    return article(Craft::knitted, piece("plain", 20, 180, Grows::length));
}
inline Template woven_scarf() {
    return article(Craft::woven, piece("tabby", 25, 180, Grows::length));
}

}  // namespace invented
