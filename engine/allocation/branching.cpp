#include "engine/allocation/branching.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright::allocation {
namespace {

using Of = Branching::Of;

class Chooser {
  public:
    Chooser(const Model& m, const Decisions& d, const FlowBound& flow)
        : m_(m), d_(d), flow_(flow) {}

    Branching choose() {
        for (std::size_t j = 0; j < m_.pieces; ++j) look_at_piece(j);
        for (const auto& pair : m_.different) look_at_different(pair);
        for (const auto& pair : m_.same) look_at_same(pair);
        for (std::size_t i = 0; i < m_.skeins; ++i) look_at_skein(i);
        return best_.of == Of::nothing ? anything_open() : best_;
    }

  private:
    void offer(double offence, Branching branching) {
        if (offence <= worst_) return;
        worst_ = offence;
        best_ = branching;
    }

    // Pieces worth nothing themselves (the reserve) still shape the plan.
    double weight(std::size_t j) const {
        return static_cast<double>(m_.piece[j].value) +
               static_cast<double>(m_.piece[j].least) * 100;
    }

    std::size_t supports(std::size_t j) const {
        std::size_t count = 0;
        for (std::size_t i = 0; i < m_.skeins; ++i) count += flow_.gross(i, j) > 0 ? 1 : 0;
        return count;
    }

    void look_at_piece(std::size_t j) {
        if (d_.made[j] == Say::no) return;
        const Cm total = flow_.gross_of(j);
        if (total == 0) return;
        const double share =
            std::min(1.0, static_cast<double>(total) / static_cast<double>(flow_.base(j)));
        const double part = std::min(share, 1 - share);
        const auto served = supports(j);
        const auto fewest = static_cast<std::size_t>(d_.fewest[j]);
        if (d_.most[j] == 1) {
            if (served > 1 || part > 0)
                offer(weight(j) * (part + 0.25 * static_cast<double>(served > 1)),
                      {Of::place, 0, j});
            return;
        }
        if (d_.made[j] == Say::open && part > 0) offer(weight(j) * part, {Of::made, 0, j});
        if (served > fewest) {
            const double joins = static_cast<double>(served - fewest) *
                                 (static_cast<double>(m_.piece[j].join_cost) + weight(j) * 0.01);
            if (d_.fewest[j] < d_.most[j])
                offer(joins, {Of::count, 0, j});
            else
                offer(joins, {Of::pair, smallest_open_support(j), j});
        }
        for (std::size_t i = 0; i < m_.skeins; ++i)
            if (d_.pair(i, j) == Say::open && flow_.gross(i, j) > 0 &&
                flow_.gross(i, j) < least_gross(m_, d_, j))
                offer(weight(j) * 0.005, {Of::pair, i, j});
    }

    std::size_t smallest_open_support(std::size_t j) const {
        std::size_t best = 0;
        Cm least = -1;
        for (std::size_t i = 0; i < m_.skeins; ++i) {
            const Cm gross = flow_.gross(i, j);
            if (d_.pair(i, j) != Say::open || gross == 0 || (least >= 0 && gross >= least))
                continue;
            best = i;
            least = gross;
        }
        return best;
    }

    void look_at_different(const TwoPieces& pair) {
        for (std::size_t i = 0; i < m_.skeins; ++i)
            if (flow_.gross(i, pair.first) > 0 && flow_.gross(i, pair.second) > 0)
                offer_pair(weight(pair.first) * 0.1, i, pair.first, pair.second);
    }

    void look_at_same(const TwoPieces& pair) {
        if (flow_.gross_of(pair.first) == 0 || flow_.gross_of(pair.second) == 0) return;
        for (std::size_t i = 0; i < m_.skeins; ++i)
            if ((flow_.gross(i, pair.first) > 0) != (flow_.gross(i, pair.second) > 0))
                offer_pair(weight(pair.first) * 0.1, i, pair.first, pair.second);
    }

    void offer_pair(double offence, std::size_t i, std::size_t a, std::size_t b) {
        for (const auto j : {a, b})
            if (d_.pair(i, j) == Say::open) return offer(offence, {Of::pair, i, j});
    }

    void look_at_skein(std::size_t i) {
        if (d_.opened[i] != Say::open || m_.bonus[i] == 0) return;
        Cm used = 0;
        for (std::size_t j = 0; j < m_.pieces; ++j)
            if (m_.piece[j].opens) used += flow_.gross(i, j);
        const double share = static_cast<double>(used) / static_cast<double>(m_.length[i]);
        if (share > 0 && share < 1)
            offer(static_cast<double>(m_.bonus[i]) * (1 - share), {Of::opened, i, 0});
    }

    // The flow offends nothing, but rounding left a gap: ask what is open, in this order.
    Branching anything_open() const {
        for (std::size_t j = 0; j < m_.pieces; ++j)
            if (d_.made[j] == Say::open) return {Of::made, 0, j};
        for (std::size_t j = 0; j < m_.pieces; ++j)
            if (d_.made[j] == Say::yes && d_.fewest[j] < d_.most[j]) return {Of::count, 0, j};
        for (std::size_t j = 0; j < m_.pieces; ++j)
            for (std::size_t i = 0; i < m_.skeins; ++i)
                if (d_.made[j] == Say::yes && d_.pair(i, j) == Say::open) return {Of::pair, i, j};
        return {};
    }

    const Model& m_;
    const Decisions& d_;
    const FlowBound& flow_;
    double worst_ = 0;
    Branching best_;
};

// Alike in themselves and in everything decided so far.
bool twins(const Model& m, const Decisions& d, std::size_t a, std::size_t b) {
    if (m.alike[a] != m.alike[b] || d.opened[a] != d.opened[b]) return false;
    for (std::size_t j = 0; j < m.pieces; ++j)
        if (d.pair(a, j) != d.pair(b, j)) return false;
    return true;
}

bool has_earlier_twin(const Model& m, const Decisions& d, std::size_t i) {
    for (std::size_t k = 0; k < i; ++k)
        if (twins(m, d, k, i)) return true;
    return false;
}

std::vector<Decisions> places(const Model& m, const Decisions& d, std::size_t j) {
    std::vector<Decisions> out;
    for (std::size_t i = 0; i < m.skeins; ++i) {
        if (d.pair(i, j) != Say::open || has_earlier_twin(m, d, i)) continue;
        out.push_back(d);
        out.back().pair(i, j) = Say::yes;
        out.back().made[j] = Say::yes;
    }
    if (d.made[j] == Say::open) {
        out.push_back(d);
        out.back().made[j] = Say::no;
    }
    return out;
}

// Yes for this skein; no for it and all its twins.
template <class At>
std::vector<Decisions> yes_or_no(const Model& m, const Decisions& d, std::size_t i, At at) {
    std::vector<Decisions> out{d, d};
    at(out[0], i) = Say::yes;
    for (std::size_t k = 0; k < m.skeins; ++k)
        if (k == i || twins(m, d, k, i)) at(out[1], k) = Say::no;
    return out;
}

}  // namespace

Branching next_branching(const Model& m, const Decisions& d, const FlowBound& flow) {
    return Chooser(m, d, flow).choose();
}

Branching next_branching(const Model& m, const Decisions& d, const Wants& wants) {
    Branching out;
    double worst = 0;
    const auto offer = [&](double share, double weight, Branching branching) {
        const double part = std::min(share, 1 - share);
        if (part < 0.01 || part * weight <= worst) return;
        worst = part * weight;
        out = branching;
    };
    for (std::size_t j = 0; j < m.pieces; ++j)
        if (d.made[j] == Say::open)
            offer(wants.made[j], static_cast<double>(m.piece[j].value), {Of::made, 0, j});
    for (const auto& [a, b] : m.same) {
        const auto open = d.made[a] == Say::open ? a : b;
        if (d.made[open] != Say::open) continue;
        double apart = 0;
        for (std::size_t i = 0; i < m.skeins; ++i)
            apart = std::max(
                apart, std::abs(wants.served[i * m.pieces + a] - wants.served[i * m.pieces + b]));
        offer(0.5 * std::min({apart, wants.made[a], wants.made[b]}),
              static_cast<double>(m.piece[open].value), {Of::made, 0, open});
    }
    for (std::size_t i = 0; i < m.skeins; ++i)
        if (d.opened[i] == Say::open && m.bonus[i] > 0)
            offer(wants.opened[i], static_cast<double>(m.bonus[i]), {Of::opened, i, 0});
    if (out.of != Of::nothing) return out;
    for (std::size_t j = 0; j < m.pieces; ++j) {
        if (d.made[j] == Say::no || d.fewest[j] >= d.most[j]) continue;
        double served = 0;
        for (std::size_t i = 0; i < m.skeins; ++i) served += wants.served[i * m.pieces + j];
        const double more = served - d.fewest[j];
        if (more > 0.02 && more < 0.98)
            offer(more, static_cast<double>(m.piece[j].join_cost) + 1, {Of::count, 0, j});
    }
    if (out.of != Of::nothing) return out;
    for (std::size_t i = 0; i < m.skeins; ++i)
        for (std::size_t j = 0; j < m.pieces; ++j)
            if (d.pair(i, j) == Say::open && d.made[j] != Say::no)
                offer(wants.served[i * m.pieces + j],
                      static_cast<double>(m.piece[j].value + m.piece[j].join_cost),
                      {Of::pair, i, j});
    return out;
}

std::vector<Decisions> branches(const Model& m, const Decisions& d, const Branching& q) {
    if (q.of == Of::place) return places(m, d, q.piece);
    if (q.of == Of::pair)
        return yes_or_no(m, d, q.skein,
                         [&](Decisions& x, std::size_t i) -> Say& { return x.pair(i, q.piece); });
    if (q.of == Of::opened)
        return yes_or_no(m, d, q.skein,
                         [](Decisions& x, std::size_t i) -> Say& { return x.opened[i]; });
    std::vector<Decisions> out{d, d};
    if (q.of == Of::made) {
        out[0].made[q.piece] = Say::yes;
        out[1].made[q.piece] = Say::no;
    } else if (q.of == Of::count) {
        out[0].most[q.piece] = d.fewest[q.piece];
        out[1].fewest[q.piece] = d.fewest[q.piece] + 1;
    } else {
        out.clear();
    }
    return out;
}

}  // namespace gristwright::allocation
