#include "cli/output/joins.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/project/order.hpp"

namespace gristwright::cli {
namespace {

// A stretch of the work that takes yarn.
struct Stretch {
    std::size_t part;
    bool warp;
    double metres;
};

// The part that is the so manieth of a piece.
std::size_t part_of(const Assembled& article, const PlanPiece& piece, int which) {
    std::size_t part = 0;
    for (; part < article.parts.size(); ++part)
        if (article.parts[part].piece == &piece && --which == 0) break;
    return part;
}

// The warp of all alike is wound before the first is woven; on a frame, which wastes nothing, each
// is warped and woven by itself.
std::vector<Stretch> stretches(const Assembled& article, const Plan& plan) {
    std::vector<Stretch> out;
    const bool on_frame = is_on_frame(*plan.article);
    for (const auto& worked : order_of_work(*plan.article)) {
        const auto& p = plan.pieces[worked.piece];
        const auto part = part_of(article, p, worked.which);
        const double warp = p.warp.si() * p.piece->warp_ours();
        const double rest = p.woven ? p.weft.si() * p.piece->weft_ours() : p.ours.si();
        if (p.woven && (on_frame || worked.which == 1))
            out.push_back({part, true, on_frame ? warp / p.piece->count : warp});
        out.push_back({part, false, rest / p.piece->count});
    }
    return out;
}

Line end_of_warp(const Placed& placed, double share) {
    Bounds box;
    box.hold(placed.edge);
    const double x = box.low.x + share * box.width();
    return {{x, box.low.y}, {x, box.high.y}};
}

// `share` of the stretch's yarn is used.
Join join_in(const Assembled& article, const Stretch& stretch, double share, std::size_t skein) {
    const auto& placed = article.parts[stretch.part];
    const auto& p = *placed.piece;
    const auto nth = [](double part, int of) {
        return std::clamp(static_cast<int>(std::ceil(part * of)), 1, std::max(1, of));
    };
    if (stretch.warp)
        return {skein, stretch.part, true, nth(share, p.panel.ends), end_of_warp(placed, share)};
    const bool back = placed.backwards;
    const double drawn =
        back ? 1 - rows_for_yarn(p.outline, 1 - share) : rows_for_yarn(p.outline, share);
    return {skein, stretch.part, false, nth(drawn, p.knit ? p.rows : p.panel.picks),
            placed.row(back ? 1 - drawn : drawn)};
}

bool goes_round(const PlanPiece& p) {
    return p.outline.shape == Shape::tube || p.outline.shape == Shape::cap;
}

}  // namespace

std::vector<Join> joins(const Assembled& article, const Plan& plan, const YarnProfile& yarn) {
    std::vector<Join> out;
    double before = 0, reached = 0;
    std::size_t skein = 0;
    for (const auto& stretch : stretches(article, plan)) {
        while (skein + 1 < yarn.skeins.size() && stretch.metres > 0) {
            const double end = reached + yarn.skeins[skein].length.si();
            if (end >= before + stretch.metres) break;
            out.push_back(join_in(article, stretch, (end - before) / stretch.metres, skein));
            reached = end;
            ++skein;
        }
        before += stretch.metres;
    }
    return out;
}

std::string words(const Join& join, const Assembled& article, const std::string& skein) {
    const auto& p = *article.parts[join.part].piece;
    const char* what = join.in_warp    ? "warp end"
                       : p.woven       ? "pick"
                       : goes_round(p) ? "round"
                                       : "row";
    return fmt::format("{} ends, {} {}", skein, what, join.number);
}

}  // namespace gristwright::cli
