#include "engine/evidence/progress.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "engine/evidence/constants.hpp"
#include "engine/evidence/evidence.hpp"

namespace gristwright {
namespace {

using namespace constants;

void question_order(Mass start, const std::vector<Weighing>& weighings) {
    if (weighings.empty()) throw std::invalid_argument("there is no weighing yet");
    Weighing last{0, start};
    for (const auto& w : weighings) {
        if (w.ball > last.ball)
            throw std::invalid_argument(fmt::format(
                "the ball weighs {:.1f} g and weighed {:.1f} g before: did a skein join it, or is "
                "it another ball?",
                in_grams(w.ball), in_grams(last.ball)));
        if (w.row <= last.row)
            throw std::invalid_argument(fmt::format(
                "row {:.0f} comes after row {:.0f}: was some of it ripped back?", w.row, last.row));
        last = w;
    }
}

// Rows of the first piece that `metres` reach when it takes `factor` times what was planned.
double row_reached(const PlanPiece& piece, double metres, double factor) {
    const double share = metres / (piece.metres.mid.si() * factor);
    return share >= 1 ? piece.rows : rows_for_yarn(piece.outline, share) * piece.rows;
}

}  // namespace

Progress progress(const Plan& plan, LinearDensity grist, Mass start,
                  const std::vector<Weighing>& weighings) {
    question_order(start, weighings);
    const auto& piece = plan.pieces.front();
    const auto& last = weighings.back();
    const double expected =
        piece.metres.mid.si() * yarn_after_rows(piece.outline, last.row / piece.rows);
    Progress out;
    out.used = (start - last.ball) / grist;
    out.left = last.ball / grist;
    out.factor = posterior({1, plan.need.spread}, {out.used.si() / expected, as_it_goes});

    double rest = 0;
    for (std::size_t p = 1; p < plan.pieces.size(); ++p)
        if (plan.pieces[p].piece->yarn == 1) rest += plan.pieces[p].metres.mid.si();
    const double z = normal_quantile(plan.asked);
    const double sure = out.factor.mid * std::exp(z * out.factor.spread);
    const double all = out.used.si() + out.left.si();
    out.last_row = row_reached(piece, all, out.factor.mid);
    out.sure_row = row_reached(piece, all, sure);
    const double still = (piece.metres.mid.si() + rest) * out.factor.mid;
    out.chance = chance_of_enough(still, out.factor.spread, all, 0);
    out.reaches = out.chance >= plan.asked;
    if (rest > 0) {
        out.keep_for_rest = metres(rest * sure) * grist;
        out.begin_rest_row = row_reached(piece, std::max(0.0, all - rest * sure), sure);
    }
    return out;
}

}  // namespace gristwright
