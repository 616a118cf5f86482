#include "cli/output/laid_cloth.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "cli/output/yarn_in_cloth.hpp"
#include "engine/lay/constants.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/laid.hpp"
#include "engine/project/by_cloth.hpp"

namespace gristwright::cli {
namespace {

constexpr double stitches_shown = 9, threads_shown = 15;  // across the near view

// A colour that wool grows in, for a second yarn of which nobody said one.
struct Natural {
    const char* words;
    Colour colour;
};
constexpr Natural dark{"a dark natural brown", {0.36, 0.27, 0.22}};
constexpr Natural pale{"a pale natural white", {0.86, 0.82, 0.74}};

double lightness(const Colour& c) { return 0.2126 * c.red + 0.7152 * c.green + 0.0722 * c.blue; }

// The one that stands off further from the batch's own colours.
const Natural& contrast_to(const std::vector<Colour>& own) {
    double sum = 0;
    for (const auto& colour : own) sum += lightness(colour);
    const double light = own.empty() ? lightness({}) : sum / double(own.size());
    return light - lightness(dark.colour) >= lightness(pale.colour) - light ? dark : pale;
}

// What of the cloth is this batch's.
enum class Ours { all, first_of_two, weft, warp };

Ours ours_of(const Plan& plan, const PlanPiece& piece) {
    const bool two = by_cloth(
        piece, [](const KnitCloth& k) { return lay::of_two_yarns(*k.fabric); },
        [](const WovenCloth& w) { return lay::of_two_yarns(*w.weave); });
    if (two) return Ours::first_of_two;
    if (!piece.woven) return Ours::all;
    if (plan.article->role == Role::weft) return Ours::weft;
    return plan.article->role == Role::warp ? Ours::warp : Ours::all;
}

// mm across a panel: a repeat where a few stitches are not enough.
double shown(double spacing, int repeat, double wanted) {
    return spacing * std::max(wanted, repeat + 1.0);
}

void lay_knitted(const KnitCloth& cloth, double thickness, LaidCloth& out) {
    const auto spacing = lay::spacing(cloth, millimetres(thickness));
    const auto fabric = cloth.fabric;
    out.strands = [=](double w, double h) { return lay::laid(*fabric, spacing, w, h); };
    out.near_mm = shown(spacing.stitch, lay::repeat_across(*fabric), stitches_shown);
    if (fabric->built != KnitBuild::two_layers) return;
    out.half_mm = constants::knit_layers_part * thickness;
    out.near_mm = spacing.stitch * 2 * lay::repeat_across(*fabric);  // a figure on either side
}

void lay_woven(const WovenCloth& cloth, double thickness, LaidCloth& out) {
    const double end = 1000 * (1 - cloth.width.mid) / cloth.ends.si();
    const double pick = 1000 * (1 - cloth.length.mid) / cloth.picks.si();
    const auto weave = cloth.weave;
    out.strands = [=](double w, double h) {
        return lay::laid(*weave, {end, pick, thickness}, w, h);
    };
    out.near_mm = shown(end, lay::repeat_across(*weave), threads_shown);
}

// 0 stitches open .. 1 fulled hard: what hair there is draws together.
double felted(const Plan& plan, const PlanPiece& piece, const YarnProfile& yarn) {
    const double most = 1 - constants::fulled_area;
    const double fulled = by_cloth(
        piece, [&](const KnitCloth& k) { return std::clamp((1 - k.growth.mid) / most, 0.0, 1.0); },
        [&](const WovenCloth&) { return plan.article->finish == Finish::hard_fulled ? 1.0 : 0.0; });
    return fulled * yarn.hair;
}

// Where the wefts have areas the other yarn of a batch that is all weft is the hidden warp.
OtherYarn other_shown(const Plan& plan, const PlanPiece& piece) {
    const bool hidden =
        plan.article->role == Role::weft && piece.woven && !piece.woven->weave->areas.empty();
    return hidden ? OtherYarn{} : plan.other;
}

lay::Fibres other_fibres(lay::Fibres own, const OtherYarn& other, const YarnProfile& yarn) {
    if (other.grist.si() > 0) own.thickness *= std::sqrt(other.grist / yarn.linear_density.mid);
    own.colours =
        other.colours.empty() ? std::vector{contrast_to(own.colours).colour} : other.colours;
    return own;
}

}  // namespace

LaidCloth laid_cloth(const Plan& plan, const PlanPiece& piece, const YarnProfile& yarn,
                     const Question& q) {
    auto own = fibres_of(yarn, std::max(1, q.measured.batch.plies), q.measured.colours);
    own.felted = felted(plan, piece, yarn);
    LaidCloth out;
    if (piece.knit) lay_knitted(*piece.knit, own.thickness, out);
    if (piece.woven) lay_woven(*piece.woven, own.thickness, out);
    const auto ours = ours_of(plan, piece);
    out.yarns = {own, own};
    if (ours != Ours::all)
        out.yarns[ours == Ours::weft ? 0 : 1] = other_fibres(own, other_shown(plan, piece), yarn);
    return out;
}

std::string second_words(const Plan& plan, const PlanPiece& piece, const Question& q) {
    const auto ours = ours_of(plan, piece);
    if (ours == Ours::all) return "";
    const char* which = ours == Ours::weft   ? "the warp"
                        : ours == Ours::warp ? "the weft"
                                             : "the second yarn";
    const auto other = other_shown(plan, piece);
    if (!other.colours.empty())
        return fmt::format(", {} drawn in the colour of {}", which, other.name);
    return fmt::format(", {} drawn in {}, since no colour of it was said", which,
                       contrast_to(q.measured.colours).words);
}

}  // namespace gristwright::cli
