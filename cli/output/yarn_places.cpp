#include "cli/output/yarn_places.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/order.hpp"

namespace gristwright::cli {

std::vector<Stretch> stretches(const Plan& plan) {
    std::vector<Stretch> out;
    Length used;
    const auto add = [&](const PlanPiece& piece, int which, bool warp, Length takes) {
        if (takes.si() <= 0) return;
        out.push_back({&piece, which, warp, used, used + takes});
        used += takes;
    };
    for (const auto& worked : order_of_work(*plan.article)) {
        const auto& piece = plan.pieces[worked.piece];
        if (piece.woven && worked.which == 1)
            add(piece, 1, true, piece.warp * piece.piece->warp_ours());
        const auto whole = piece.woven ? piece.weft * piece.piece->weft_ours() : piece.ours;
        add(piece, worked.which, false, whole / piece.piece->count);
    }
    return out;
}

YarnPlace place_after(const std::vector<Stretch>& work, Length used) {
    const auto at = std::find_if(work.begin(), work.end(),
                                 [&](const Stretch& stretch) { return used < stretch.ends; });
    if (at == work.end()) {
        if (work.empty()) return {};
        return {work.back().piece, work.back().which, work.back().warp, 1};
    }
    const double share = std::max(0.0, (used - at->begins) / (at->ends - at->begins));
    const auto& piece = *at->piece;
    return {&piece, at->which, at->warp, piece.knit ? rows_for_yarn(piece.outline, share) : share};
}

int rows_at(const YarnPlace& place) {
    if (!place.piece || !place.piece->knit) return 0;
    return static_cast<int>(std::floor(place.share * place.piece->rows));
}

}  // namespace gristwright::cli
