#include "engine/evidence/yarn_places.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/order.hpp"

namespace gristwright {
namespace {

double counted(const Plan& plan, const YarnPlace& place) {
    const auto& piece = plan.pieces[place.piece];
    const int all = place.warp ? piece.panel.ends : piece.woven ? piece.panel.picks : piece.rows;
    return place.share * all;
}

}  // namespace

std::vector<Stretch> stretches(const Plan& plan) {
    std::vector<Stretch> out;
    Length used;
    const auto add = [&](const Worked& worked, bool warp, Length takes) {
        if (takes.si() <= 0) return;
        out.push_back({worked.piece, worked.which, warp, used, used + takes});
        used += takes;
    };
    const bool on_pins = plan.article->loom == Loom::pins;
    for (const auto& worked : order_of_work(*plan.article)) {
        const auto& piece = plan.pieces[worked.piece];
        const int count = piece.piece->count;
        const auto warp = piece.warp * piece.piece->warp_ours();
        if (on_pins || worked.which == 1) add(worked, true, on_pins ? warp / count : warp);
        const auto rest = piece.woven ? piece.weft * piece.piece->weft_ours() : piece.ours;
        add(worked, false, rest / count);
    }
    return out;
}

YarnPlace place_after(const Plan& plan, const std::vector<Stretch>& work, Length used) {
    if (work.empty()) return {};
    const auto at = std::find_if(work.begin(), work.end(),
                                 [&](const Stretch& stretch) { return used < stretch.ends; });
    if (at == work.end()) return {work.back().piece, work.back().which, work.back().warp, 1};
    const double share = std::max(0.0, (used - at->begins) / (at->ends - at->begins));
    const auto& piece = plan.pieces[at->piece];
    return {at->piece, at->which, at->warp, piece.woven ? share : row_by_yarn(piece, share)};
}

int done_at(const Plan& plan, const YarnPlace& place) {
    return static_cast<int>(std::floor(counted(plan, place)));
}

int in_work_at(const Plan& plan, const YarnPlace& place) {
    return std::max(1, static_cast<int>(std::ceil(counted(plan, place))));
}

double yarn_by_row(const PlanPiece& piece, double rows_share) {
    if (!piece.piece->narrow_first) return yarn_after_rows(piece.outline, rows_share);
    return 1 - yarn_after_rows(piece.outline, 1 - rows_share);
}

double row_by_yarn(const PlanPiece& piece, double yarn_share) {
    if (!piece.piece->narrow_first) return rows_for_yarn(piece.outline, yarn_share);
    return 1 - rows_for_yarn(piece.outline, 1 - yarn_share);
}

}  // namespace gristwright
