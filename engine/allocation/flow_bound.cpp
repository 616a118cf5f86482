#include "engine/allocation/flow_bound.hpp"

#include <algorithm>

#include "engine/allocation/checker.hpp"

namespace gristwright::allocation {
namespace {

std::vector<std::size_t> arcs(const Model& m) {
    std::vector<std::size_t> out;
    for (const auto& piece : m.piece) out.push_back(1 + piece.stretch.size());
    return out;
}

Price rounded_up(Price worth, Cm length) { return (worth + length - 1) / length; }

// What using a centimetre of a skein costs at least while it is open whether it stays whole.
Price charge(const Model& m, const Decisions& d, std::size_t i, std::size_t j) {
    if (!m.piece[j].opens || d.opened[i] != Say::open || m.bonus[i] == 0) return 0;
    return m.bonus[i] * price_unit / m.length[i];
}

}  // namespace

FlowBound::FlowBound(const Model& model)
    : model_(model),
      network_(model.meets, arcs(model)),
      gross_(model.skeins * model.pieces),
      base_(model.pieces),
      fixed_(model.skeins * model.pieces),
      slopes_(model.pieces) {}

std::vector<FlowBound::Slope> FlowBound::hull(const Decisions& d, std::size_t j) const {
    const auto& piece = model_.piece[j];
    const int joins = d.fewest[j] - 1;
    std::vector<Slope> out;
    const Price value = std::max<Price>(0, (piece.value - joins * piece.join_cost) * price_unit);
    Cm length = base_[j];
    Price worth = value;
    std::size_t next = 0;
    // Stretches steeper than the base so far are taken into it.
    while (next < piece.stretch.size() &&
           piece.stretch[next].per_cm * price_unit > worth / length) {
        worth += piece.stretch[next].length * piece.stretch[next].per_cm * price_unit;
        length += piece.stretch[next].length;
        ++next;
    }
    out.push_back({length, rounded_up(worth, length)});
    for (; next < piece.stretch.size(); ++next)
        out.push_back({piece.stretch[next].length, piece.stretch[next].per_cm * price_unit});
    return out;
}

// Puts piece j's arcs to the sink; gives what is sure of its worth.
Price FlowBound::offer(const Decisions& d, std::size_t j, Cm fixed) {
    const auto& piece = model_.piece[j];
    base_[j] = piece.least + d.fewest[j] * piece.tail;
    const std::size_t all = 1 + piece.stretch.size();
    slopes_[j].clear();
    if (d.made[j] == Say::open) slopes_[j] = hull(d, j);
    if (d.made[j] == Say::yes) {
        slopes_[j].push_back({base_[j], 0});
        for (const auto& s : piece.stretch) slopes_[j].push_back({s.length, s.per_cm * price_unit});
    }
    Price sure = 0;
    if (d.made[j] == Say::yes)
        sure = (piece.value - (d.fewest[j] - 1) * piece.join_cost) * price_unit;
    // What is fixed to flow fills the arcs from the first on.
    for (auto& slope : slopes_[j]) {
        const Cm part = std::min(slope.length, fixed);
        sure += part * slope.gain;
        slope.length -= part;
        fixed -= part;
    }
    overfull_ = overfull_ || fixed > 0;
    for (std::size_t a = 0; a < all; ++a) {
        const auto slope = a < slopes_[j].size() ? slopes_[j][a] : Slope{};
        if (a == 0 && d.made[j] == Say::yes)
            network_.must_take(j, slope.length);
        else
            network_.take(j, a, slope.length, slope.gain);
    }
    return sure;
}

void FlowBound::offer_skeins(const Decisions& d) {
    for (std::size_t i = 0; i < model_.skeins; ++i) {
        Cm free = model_.length[i];
        for (std::size_t j = 0; j < model_.pieces; ++j) {
            const std::size_t at = i * model_.pieces + j;
            const bool yes = d.pair(i, j) == Say::yes;
            fixed_[at] = yes ? least_bare(model_, d, j) : 0;
            free -= fixed_[at];
        }
        network_.skein(i, free);
        for (std::size_t j = 0; j < model_.pieces; ++j) {
            if (!model_.may_meet(i, j)) continue;
            const std::size_t at = i * model_.pieces + j;
            const Cm most =
                d.pair(i, j) == Say::no
                    ? 0
                    : std::min(model_.length[i], model_.piece[j].most + model_.piece[j].tail) -
                          fixed_[at];
            network_.meet(i, j, std::max<Cm>(0, std::min(most, free)),
                          model_.cost[i][j] * price_unit + charge(model_, d, i, j));
        }
    }
}

std::optional<Points> FlowBound::bound(const Decisions& d) {
    offer_skeins(d);
    Price worth = 0;
    overfull_ = false;
    for (std::size_t j = 0; j < model_.pieces; ++j) {
        Cm fixed = 0;
        for (std::size_t i = 0; i < model_.skeins; ++i) fixed += fixed_[i * model_.pieces + j];
        worth += offer(d, j, fixed);
    }
    if (overfull_) return {};
    network_.run();
    for (std::size_t j = 0; j < model_.pieces; ++j) {
        if (d.made[j] == Say::yes && network_.taken(j, 0) < slopes_[j][0].length) return {};
        for (std::size_t a = 0; a < slopes_[j].size(); ++a)
            worth += network_.taken(j, a) * slopes_[j][a].gain;
    }
    for (std::size_t i = 0; i < model_.skeins; ++i) {
        if (d.opened[i] != Say::yes) worth += model_.bonus[i] * price_unit;
        for (std::size_t j = 0; j < model_.pieces; ++j) {
            const std::size_t at = i * model_.pieces + j;
            gross_[at] = fixed_[at] + network_.flow(i, j);
            if (gross_[at] > 0)
                worth -= gross_[at] * (model_.cost[i][j] * price_unit + charge(model_, d, i, j));
        }
    }
    return worth >= 0 ? worth / price_unit : (worth - price_unit + 1) / price_unit;
}

Cm FlowBound::gross_of(std::size_t j) const {
    Cm sum = 0;
    for (std::size_t i = 0; i < model_.skeins; ++i) sum += gross(i, j);
    return sum;
}

CutList FlowBound::plan(const Problem& problem) const {
    CutList out;
    for (std::size_t j = 0; j < model_.pieces; ++j)
        for (std::size_t i = 0; i < model_.skeins; ++i) {
            if (gross(i, j) == 0) continue;
            if (!model_.piece[j].opens)
                out.reserve = i;
            else
                out.cuts.push_back({i, j, gross(i, j)});
        }
    out.worth = worth(problem, out);
    return out;
}

}  // namespace gristwright::allocation
