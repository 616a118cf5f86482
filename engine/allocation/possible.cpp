#include "engine/allocation/possible.hpp"

#include <algorithm>

namespace gristwright::allocation {

Problem worth_nothing(Problem p) {
    for (auto& piece : p.pieces) piece.value = piece.join_cost = 0;
    for (auto& piece : p.pieces)
        for (auto& s : piece.stretch) s.per_cm = 0;
    for (auto& skein : p.skeins) skein.bonus = 0;
    for (auto& row : p.mismatch)
        for (auto& cost : row)
            if (cost) cost = 0;
    return p;
}

Allocation Looks::best(const Problem& problem, const CutList* start) {
    auto effort = effort_;
    effort.nodes = std::clamp(together_ - spent_, 0, each_);
    if (effort_.watch)
        effort.watch = [this](const Progress& at) {
            effort_.watch({at.stage, spent_ + at.nodes, together_, at.gap});
        };
    auto out = start ? allocate(problem, effort, *start) : allocate(problem, effort);
    spent_ += out.nodes + 1;
    using Outcome = Allocation::Outcome;
    unsettled_ = unsettled_ || out.outcome == Outcome::nothing_found;
    return out;
}

bool Looks::possible(const Problem& problem) { return best(worth_nothing(problem)).found(); }

}  // namespace gristwright::allocation
