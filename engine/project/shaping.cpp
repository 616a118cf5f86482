#include "engine/project/shaping.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

// What is shaped to and fro is shaped on the right side, and in the round every second round is
// counted more easily than every third.
constexpr int rows_together = 2;

// So many rows, evenly apart, the last of them the last; each takes the same share.
std::vector<Reached> in_steps(const Shaping& s, int steps) {
    std::vector<Reached> out;
    const double share = std::pow(double(s.to) / s.from, 1.0 / steps);
    for (int i = 1; i <= steps; ++i)
        out.push_back(
            {s.rows * i / steps,
             i == steps ? s.to : static_cast<int>(std::lround(s.from * std::pow(share, i)))});
    return out;
}

std::vector<Reached> doubled(const Shaping& s, int first) {
    std::vector<Reached> out;
    int stitches = s.from;
    for (int row = first; row <= s.rows; row *= 2) out.push_back({row, stitches *= 2});
    return out;
}

// The first and last counts in the order of the work.
Shaping first_and_last(const PlanPiece& p) {
    const auto& c = p.piece->counting;
    const bool to_none = !c.gusset_of.empty();
    const int few = p.few_stitches > 0 || to_none ? p.few_stitches : p.stitches;
    const bool grows = p.outline.shape != Shape::taper || p.piece->narrow_first;
    Shaping out;
    out.from = grows ? few : p.stitches;
    out.to = grows ? p.stitches : few;
    out.rows = p.rows;
    out.in_rounds = c.in_rounds || p.outline.shape == Shape::circle;
    out.by = c.by > 0 ? c.by : 2;
    return out;
}

}  // namespace

int Shaping::times() const { return by > 0 ? std::abs(to - from) / by : 0; }

std::vector<Run> spread_over(int rows, int times, int together) {
    if (times < 1) return {};
    if (together > 1 && rows / together >= times) {
        auto out = spread_over(rows / together, times, 1);
        for (auto& run : out) run.every *= together;
        return out;
    }
    const int every = rows / times, later = rows % times;
    std::vector<Run> out;
    if (times > later) out.push_back({every, times - later});
    if (later > 0) out.push_back({every + 1, later});
    return out;
}

Shaping shaping_of(const PlanPiece& p) {
    auto out = first_and_last(p);
    const auto& c = p.piece->counting;
    if (out.from == out.to) return out;
    if (c.doubles > 0)
        out.reached = doubled(out, c.doubles);
    else if (c.steps > 0)
        out.reached = in_steps(out, c.steps);
    else if (c.every > 0)
        out.runs = {{c.every, out.times()}};
    else
        out.runs = spread_over(p.rows, out.times(), rows_together);
    return out;
}

YokeParts yoke_parts(const Plan& plan, const PlanPiece& yoke) {
    const auto* body = plan.piece_named("body");
    const auto* sleeve = plan.piece_named("sleeve");
    if (!body || !sleeve) return {};
    YokeParts out;
    out.underarm = (body->stitches + 2 * sleeve->stitches - yoke.stitches) / 4;
    const int gained = 2 * shaping_of(yoke).times();  // by each part, one at each of its lines
    const int both = body->stitches - 2 * out.underarm - 2 * gained;
    out.back = both - both / 2;
    out.front = both / 2;
    out.sleeve = sleeve->stitches - out.underarm - gained;
    return out;
}

}  // namespace gristwright
