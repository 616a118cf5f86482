#include "engine/evidence/skein_ends.hpp"

namespace gristwright {

std::vector<SkeinEnd> skein_ends(const Plan& plan, const std::vector<Length>& skeins, double factor,
                                 Length used) {
    std::vector<SkeinEnd> out;
    const auto& piece = plan.pieces.front();
    if (!piece.knit || piece.piece->count > 1 || piece.ours < piece.metres.mid) return out;
    Length end;
    for (std::size_t s = 0; s + 1 < skeins.size(); ++s) {
        end += skeins[s];
        if (end <= used) continue;
        const double share = end / (piece.metres.mid * factor);
        if (share >= 1) break;
        const double rows = rows_for_yarn(piece.outline, share);
        out.push_back({s, rows, rows * piece.rows});
    }
    return out;
}

}  // namespace gristwright
