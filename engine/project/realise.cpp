#include "engine/project/realise.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/project/constants.hpp"
#include "engine/project/counts.hpp"
#include "engine/project/on_the_loom.hpp"

namespace gristwright {
namespace {

using namespace constants;

constexpr double size_step = 0.01;  // m

// The least count that covers the size asked.
int covering(double count) { return std::max(1, static_cast<int>(std::ceil(count - 1e-6))); }

// Whole repeats, at least one, that cover a count.
int whole_repeats(double count, int repeat) {
    return repeat * ((covering(count) + repeat - 1) / repeat);
}

// A flat piece has edges: what lies beyond its whole repeats is knitted plain there, up to half a
// repeat; more than that is one repeat more.
void count_stitches(double count, int repeat, PlanPiece& out) {
    out.stitches = whole_repeats(count, repeat);
    if (out.outline.shape != Shape::rectangle || out.piece->counting.multiple > 1) return;
    const int beyond = covering(count) % repeat;
    if (covering(count) < repeat || beyond == 0 || beyond > repeat / 2) return;
    out.stitches = covering(count);
    out.edge_stitches = beyond;
}

void realise_knitted(const KnitCloth& cloth, PlanPiece& out) {
    const auto wanted = stitches_and_rows(out.outline, cloth.stitches, cloth.rows);
    count_stitches(wanted.stitches,
                   std::lcm(cloth.fabric->stitch_repeat, out.piece->counting.multiple), out);
    out.rows = whole_repeats(wanted.rows, cloth.fabric->row_repeat);
    if (out.outline.shape == Shape::rectangle || out.outline.shape == Shape::tube) {
        out.outline.width = Length::from_si(out.stitches / cloth.stitches.si());
        out.outline.length = Length::from_si(out.rows / cloth.rows.si());
    }
}

// Once its counts are closed: what follows from another piece is as large as they say.
void measure_knitted(double spread, PlanPiece& out) {
    const auto one = out.knit->metres_per_area.mid * area(out.outline);
    out.metres = {(one + metres(joins_and_tails)) * out.piece->count, spread};
    out.ours = out.metres.mid * out.piece->weft_ours();
}

void realise_woven(const Template& article, const WovenCloth& cloth, PlanPiece& out) {
    const int count = out.piece->count;
    auto panel = panel_of(article, *out.piece, cloth);
    panel.width = out.outline.width;
    panel.length = out.outline.length;
    out.panel = panel_metres(panel);
    out.outline.width = out.panel.reed_width * (1 - cloth.width.mid);
    out.warp = out.panel.warp * count;
    out.weft = out.panel.weft * count;
    if (article.loom == Loom::pins) out.weft += metres(pin_tails) * count;
    out.metres = {out.warp + out.weft, cloth.spread};
    out.ours = out.warp * out.piece->warp_ours() + out.weft * out.piece->weft_ours();
}

// The other yarn's, or this one's where nothing is known of it.
LinearDensity other_grist(const Plan& plan, const YarnProfile& yarn) {
    return plan.other.grist.si() > 0 ? plan.other.grist : yarn.linear_density.mid;
}

PlanPiece realise(const Template& article, const Costed& costed, double s) {
    PlanPiece out;
    out.piece = costed.piece;
    out.knit = costed.knit;
    out.woven = costed.woven;
    out.outline = costed.piece->outline;
    const auto grown = [s](Length at_ideal, double share) {
        return at_ideal * (1 + share * (s - 1));
    };
    out.outline.width = grown(out.outline.width, width_share(*out.piece));
    out.outline.narrow = grown(out.outline.narrow, narrow_share(*out.piece));
    out.outline.length = grown(out.outline.length, length_share(*out.piece));
    if (costed.knit) realise_knitted(*costed.knit, out);
    if (costed.woven) realise_woven(article, *costed.woven, out);
    return out;
}

// The whole step below a size.
Length next_smaller(Length size) { return whole_size(size - metres(size_step / 1000)); }

}  // namespace

Length whole_size(Length size) {
    return metres(std::floor(size.si() / size_step + 1e-6) * size_step);
}

void realise_at(Length size, const std::vector<Costed>& costed, const YarnProfile& yarn,
                double spread, Plan& out) {
    out.size = size;
    out.pieces.clear();
    out.pieces.reserve(costed.size());
    out.need = {{}, spread};
    out.second_yarn = {};
    const auto grist = yarn.linear_density.mid;
    for (const auto& c : costed)
        out.pieces.push_back(realise(*out.article, c, size / out.article->ideal));
    close_counts(out);
    for (std::size_t i = 0; i < costed.size(); ++i) {
        auto& piece = out.pieces[i];
        if (piece.knit) measure_knitted(costed[i].spread, piece);
        piece.mass =
            piece.ours.si() > 0 ? piece.ours * grist : piece.metres.mid * other_grist(out, yarn);
        out.need.mid += piece.ours;
        out.second_yarn += piece.metres.mid - piece.ours;
    }
    out.second_to_have = out.second_yarn * set_aside(out.asked, spread, 0);
    out.mass = out.need.mid * yarn.linear_density.mid;
    out.certainty = chance_of_enough(out.need, out.have);
}

// Whole repeats can need a little more than the quadratic says: step down until the chance holds,
// at the last to the smallest, which need not be a whole step.
void realise_largest(Length size, Length smallest, const std::vector<Costed>& costed,
                     const YarnProfile& yarn, double spread, Plan& out) {
    realise_at(size, costed, yarn, spread, out);
    while (out.certainty < out.asked && next_smaller(size) >= smallest) {
        size = next_smaller(size);
        realise_at(size, costed, yarn, spread, out);
    }
    if (out.certainty < out.asked && size > smallest)
        realise_at(smallest, costed, yarn, spread, out);
}

}  // namespace gristwright
