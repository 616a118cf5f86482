#include "engine/project/costs.hpp"

#include <fmt/core.h>

#include <cmath>
#include <stdexcept>

#include "engine/project/constants.hpp"
#include "engine/project/on_the_loom.hpp"

namespace gristwright {
namespace {

using namespace constants;

void add(Need& need, int powers, double metres) {
    (powers == 0 ? need.fixed : powers == 1 ? need.linear : need.square) += metres;
}

// A size against the ideal one: fixed + grows * s.
struct Sized {
    double fixed = 0, grows = 0;
};
Sized sized(double share) { return {1 - share, share}; }

// Of a taper, whose two ends need not grow alike.
Sized mean_width(const PieceTemplate& piece) {
    const auto& o = piece.outline;
    if (o.shape != Shape::taper) return sized(width_share(piece));
    const double both = (o.width + o.narrow).si();
    return sized((o.width.si() * width_share(piece) + o.narrow.si() * narrow_share(piece)) / both);
}

// Until its cloth was weighed, a piece may be as far from its plan as other people's pieces are.
double piece_spread(const Template& article, const YarnProfile& yarn, const KnitCloth& cloth) {
    const double apart = yarn.evidence.weighed.empty() ? article.apart.spread : double{own_piece};
    return together(cloth.metres_per_area.spread, apart);
}

Costed cost_knitted(const PieceTemplate& piece, const KnitCloth& cloth, double spread) {
    Costed out{{}, cloth, {}, {}, {}, spread};
    const double ours = piece.weft_ours();
    const auto divide = [&](int powers, double metres) {
        add(out.need, powers, ours * metres);
        add(out.other, powers, (1 - ours) * metres);
    };
    const double dense = cloth.metres_per_area.mid.si() * piece.count;
    const auto divide_product = [&](double area, const Sized& a, const Sized& b) {
        divide(0, dense * area * a.fixed * b.fixed);
        divide(1, dense * area * (a.fixed * b.grows + a.grows * b.fixed));
        divide(2, dense * area * a.grows * b.grows);
    };
    const auto wide = sized(width_share(piece));
    // A crown is as deep as it is wide round: what it leaves out goes as the square of the width.
    const double left_out = crown_leaves_out(piece.outline).si();
    divide_product(area(piece.outline).si() + left_out, mean_width(piece),
                   one_measure(piece.outline.shape) ? wide : sized(length_share(piece)));
    divide_product(-left_out, wide, wide);
    divide(0, joins_and_tails * piece.count);
    return out;
}

// Panels alike are woven one after the other on one warp: its waste is paid once.
Costed cost_woven(const Template& article, const PieceTemplate& piece, const WovenCloth& cloth) {
    Costed out{{}, {}, cloth, {}, {}, cloth.spread};
    const auto panel = panel_of(article, piece, cloth);
    const double reed = before_loss(panel.width, panel.width_loss).si();
    const double ends = panel.ends.si() * reed;
    const double pick = panel.picks.si() * reed * (1 + panel.weft_slack);
    const double woven = before_loss(panel.length, panel.length_loss).si();
    const double bare = panel.fringe.si() + panel.loom_waste.si();
    const int wide = width_grows(piece.grows) ? 1 : 0;
    const int along = length_grows(piece.grows) ? 1 : 0;
    const auto divide = [&](int powers, double metres, double ours) {
        add(out.need, powers, ours * metres * piece.count);
        add(out.other, powers, (1 - ours) * metres * piece.count);
    };
    const auto weave = [&](int powers, double length) {
        divide(powers, ends * length * (1 + panel.warp_take_up), piece.warp_ours());
        divide(powers, pick * length, piece.weft_ours());
    };
    weave(wide + along, woven);
    weave(wide, panel.hems.si());
    divide(wide, ends * bare, piece.warp_ours());
    if (article.loom == Loom::pins) divide(0, pin_tails, 1);
    return out;
}

Costed cost(const Template& article, const PieceTemplate& piece, const YarnProfile& yarn,
            const OtherYarn& other, const Fabrics& fabrics, const Equipment& owned) {
    const auto unknown = [&] {
        return std::out_of_range(fmt::format("template {}, piece {}: there is no {} fabric '{}'",
                                             article.name, piece.name, words(article.craft),
                                             piece.fabric));
    };
    if (article.craft == Craft::knitted) {
        const auto* fabric = article.own.knitted_named(piece.fabric);
        if (!fabric) fabric = fabrics.knitted_named(piece.fabric);
        if (!fabric) throw unknown();
        const auto cloth = knit_cloth(yarn, *fabric, article.firmness, owned.needles);
        return cost_knitted(piece, cloth, piece_spread(article, yarn, cloth));
    }
    const auto* weave = article.own.weave_named(piece.fabric);
    if (!weave) weave = fabrics.weave_named(piece.fabric);
    if (!weave) throw unknown();
    return cost_woven(article, piece, weave_piece(article, piece, *weave, yarn, other, owned));
}

}  // namespace

std::vector<Costed> costs(const std::shared_ptr<const Template>& article, const YarnProfile& yarn,
                          const OtherYarn& other, const Fabrics& fabrics, const Equipment& owned) {
    std::vector<Costed> out;
    out.reserve(article->pieces.size());
    for (const auto& piece : article->pieces) {
        out.push_back(cost(*article, piece, yarn, other, fabrics, owned));
        out.back().piece = {article, &piece};
    }
    return out;
}

Total total(const std::vector<Costed>& costed) {
    Total sum;
    double weighted = 0;
    for (const auto& c : costed) {
        sum.other_yarn += c.other;
        sum.need += c.need;
        weighted += c.need.at(1) * c.spread;
    }
    const double all = sum.need.at(1);
    sum.spread = all > 0 ? weighted / all : 0;
    return sum;
}

double Need::largest(double metres, double most) const {
    if (at(most) <= metres) return most;
    if (fixed > metres) return 0;
    // The root that stays good when the square vanishes; a crown's square is below zero.
    const double over = metres - fixed;
    const double roots = linear * linear + 4 * square * over;
    const double below = roots < 0 ? 0 : linear + std::sqrt(roots);
    return below > 0 ? std::min(most, 2 * over / below) : most;
}

Need& Need::operator+=(const Need& other) {
    fixed += other.fixed;
    linear += other.linear;
    square += other.square;
    return *this;
}

}  // namespace gristwright
