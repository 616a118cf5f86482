#include "engine/project/on_the_loom.hpp"

#include <algorithm>

#include "engine/project/constants.hpp"
#include "engine/project/plan.hpp"
#include "engine/project/served.hpp"

namespace gristwright {
namespace {}  // namespace

std::shared_ptr<const Template> on_this_loom(std::shared_ptr<const Template> article,
                                             const Equipment& owned) {
    if (article->craft != Craft::woven) return article;
    const bool warped = article->loom != Loom::pins;
    auto waste = article->loom_waste, fringe = article->fringe;
    if (warped && owned.shafts > 2)
        waste = std::max(waste, centimetres(constants::shaft_loom_waste));
    if (warped && owned.loom_waste) waste = *owned.loom_waste;
    if (owned.fringe && fringe.si() > 0) fringe = *owned.fringe;
    if (waste == article->loom_waste && fringe == article->fringe) return article;
    auto out = std::make_shared<Template>(*article);
    out->loom_waste = waste;
    out->fringe = fringe;
    return out;
}

Length waste_beyond_fringe(const Template& article) {
    const auto held = std::min(article.loom_waste, centimetres(constants::held_by_loom));
    return std::max(article.loom_waste - article.fringe * 2, held);
}

// Warp and weft of unlike thickness: a repeat of R ends and I crossings is R warp and I weft
// thicknesses wide, and the other way along the picks (Ashenhurst's rule for unlike yarns, from
// memory).
WovenCloth weave_piece(const Template& article, const PieceTemplate& piece, const Weave& weave,
                       const YarnProfile& yarn, const OtherYarn& other, const Equipment& owned) {
    const auto own = yarn.packed_diameter;
    const auto second = other.packed_diameter.si() > 0 ? other.packed_diameter : own;
    const double other_hair = other.hair.value_or(yarn.hair);
    const auto of_both = [](auto ours, auto theirs, double share) {
        return ours * share + theirs * (1 - share);
    };
    const auto warp = of_both(own, second, piece.warp_ours());
    const auto weft = of_both(own, second, piece.weft_ours());
    const auto r = weave.interlacing.threads, i = weave.interlacing.intersections;
    const auto across = (warp * r + weft * i) / (r + i);
    const Weaving how{article.spacing,
                      article.finish,
                      article.loom,
                      of_both(yarn.hair, other_hair, piece.warp_ours()),
                      of_both(yarn.hair, other_hair, piece.weft_ours()),
                      across,
                      [&](const WovenCloth& set) { return sett_served(article, yarn, set); }};
    auto cloth = weave_cloth(yarn, weave, how, owned);
    const auto along = (weft * r + warp * i) / (r + i);
    cloth.picks = cloth.picks * (across / along);
    return cloth;
}

Panel panel_of(const Template& article, const PieceTemplate& piece, const WovenCloth& cloth) {
    Panel out;
    out.width = piece.outline.width;
    out.length = piece.outline.length;
    out.hems = article.hem * 2;
    out.fringe = article.fringe * 2;
    out.loom_waste = waste_beyond_fringe(article) / piece.count;
    out.ends = cloth.ends;
    out.picks = cloth.picks;
    out.width_loss = cloth.width.mid;
    out.length_loss = cloth.length.mid;
    out.warp_take_up = cloth.warp_take_up;
    out.weft_slack = constants::weft_slack;
    out.end_repeat = cloth.weave->end_repeat;
    out.pick_repeat = cloth.weave->pick_repeat;
    return out;
}

}  // namespace gristwright
