#include "engine/allocation/mixture.hpp"

#include <algorithm>

namespace gristwright::allocation {
namespace {

constexpr double as_points = 1e-6, as_metres = 0.01;  // the programme's units
// What a balance that is not kept costs, in times the dearest piece or its dearest metre: large
// enough to be avoided, small enough for prices to stay prices.
constexpr double penalty = 3, penalty_if_made = 30;
constexpr int pivots_a_round = 4'000;

std::vector<double> right_hand(const Model& m, const Decisions& d) {
    std::vector<double> out(3 * m.pieces + m.skeins);
    // A hair's breadth apart, so that no two rows tie.
    for (std::size_t r = 0; r < out.size(); ++r) out[r] = 1e-7 * static_cast<double>(1 + r % 7);
    for (std::size_t j = 0; j < m.pieces; ++j)
        if (d.made[j] != Say::no) out[2 * m.pieces + j] = 1;
    for (std::size_t i = 0; i < m.skeins; ++i) out[3 * m.pieces + i] = 1;
    return out;
}

struct DearestOfAll {
    double piece = 1, metre = 0.01;  // points
};
DearestOfAll dearest_of(const Model& m) {
    DearestOfAll out;
    for (const auto& p : m.piece) {
        double worth = as_double(p.value + p.join_cost);
        for (const auto& s : p.stretch) worth += as_double(s.length * s.per_cm);
        out.piece = std::max(out.piece, worth * as_points);
        out.metre = std::max(out.metre, worth * as_points / (as_double(p.least) * as_metres));
    }
    return out;
}

double times(const Decisions& d, std::size_t j) {
    return d.made[j] == Say::yes ? penalty_if_made : penalty;
}

// What each row costs that is not balanced.
std::vector<double> penalties(const Model& m, const Decisions& d) {
    const auto [piece, metre] = dearest_of(m);
    std::vector<double> out(3 * m.pieces + m.skeins, 0);
    for (std::size_t j = 0; j < m.pieces; ++j) {
        out[j] = -times(d, j) * metre;
        out[m.pieces + j] = -times(d, j) * piece;
        if (d.made[j] == Say::yes) out[2 * m.pieces + j] = -penalty_if_made * piece;
    }
    for (std::size_t i = 0; i < m.skeins; ++i) out[3 * m.pieces + i] = -penalty_if_made * piece;
    return out;
}

}  // namespace

Mixture::Mixture(const Model& model, const Decisions& decisions)
    : m_(model),
      d_(decisions),
      penalties_(penalties(m_, d_)),
      linear_(right_hand(m_, d_), penalties_) {
    for (std::size_t j = 0; j < m_.pieces; ++j) add_piece(j);
    for (std::size_t i = 0; i < m_.skeins; ++i)  // the skein left as it is
        linear_.add(d_.opened[i] == Say::yes ? 0 : as_double(m_.bonus[i]) * as_points,
                    {{skein(i), 1}});
}

void Mixture::add_piece(std::size_t j) {
    linear_.add(penalties_[count(j)], {{count(j), -1}});
    linear_.add(0, {{balance(j), -1}});  // more than is needed does no harm
    if (d_.made[j] == Say::no) return;
    if (d_.most[j] == 1)
        made_.emplace_back(linear_.add(0, {{count(j), -1}, {once(j), 1}}), j);
    else
        add_joined(j);
}

// A piece in several skeins, at each of its sizes and with the fewest and the most skeins.
void Mixture::add_joined(std::size_t j) {
    const auto& piece = m_.piece[j];
    double worth = as_double(piece.value + piece.join_cost), length = as_double(piece.least);
    for (std::size_t s = 0; s <= piece.stretch.size(); ++s) {
        for (const int skeins : {d_.fewest[j], d_.most[j]})
            made_.emplace_back(
                linear_.add(worth * as_points, {{balance(j), -length * as_metres},
                                                {count(j), -static_cast<double>(skeins)},
                                                {once(j), 1}}),
                j);
        if (s == piece.stretch.size()) break;
        worth += as_double(piece.stretch[s].length * piece.stretch[s].per_cm);
        length += as_double(piece.stretch[s].length);
    }
}

void Mixture::add(const SkeinPattern& pattern) {
    double worth = pattern.opened ? 0 : as_double(m_.bonus[pattern.skein]);
    std::vector<Linear::Entry> entries{{skein(pattern.skein), 1}};
    for (const auto& use : pattern.uses) {
        const auto j = use.piece;
        const auto& piece = m_.piece[j];
        worth -= as_double(m_.cost[pattern.skein][j]) * use.length;
        entries.push_back({count(j), 1});
        if (d_.most[j] == 1) {
            worth += as_double(piece.value);
            double rest = use.length - as_double(piece.least + piece.tail);
            for (const auto& s : piece.stretch) {
                const double part = std::clamp(rest, 0.0, as_double(s.length));
                worth += part * as_double(s.per_cm);
                rest -= part;
            }
        } else {
            worth -= as_double(piece.join_cost);
            entries.push_back({balance(j), (use.length - as_double(piece.tail)) * as_metres});
        }
    }
    patterns_.emplace_back(linear_.add(worth * as_points, std::move(entries)), &pattern);
}

void Mixture::solve() { linear_.solve(pivots_a_round); }

double Mixture::worth() const { return linear_.worth() / as_points; }

Prices Mixture::prices() const {
    Prices out;
    for (std::size_t j = 0; j < m_.pieces; ++j) {
        out.per_cm.push_back(std::max(0.0, -linear_.price(balance(j))) / as_points * as_metres);
        out.per_skein.push_back(linear_.price(count(j)) / as_points);
    }
    return out;
}

std::vector<std::pair<const SkeinPattern*, double>> Mixture::patterns() const {
    const auto amounts = linear_.amounts();
    std::vector<std::pair<const SkeinPattern*, double>> out;
    out.reserve(patterns_.size());
    for (const auto& [column, pattern] : patterns_) out.emplace_back(pattern, amounts[column]);
    return out;
}

Wants Mixture::wants() const {
    Wants out;
    out.served.assign(m_.skeins * m_.pieces, 0);
    out.gross.assign(m_.skeins * m_.pieces, 0);
    out.made.assign(m_.pieces, 0);
    out.opened.assign(m_.skeins, 0);
    const auto amounts = linear_.amounts();
    for (const auto& [column, piece] : made_) out.made[piece] += amounts[column];
    for (const auto& [pattern, amount] : patterns()) {
        if (pattern->opened) out.opened[pattern->skein] += amount;
        for (const auto& use : pattern->uses) {
            const auto at = pattern->skein * m_.pieces + use.piece;
            out.served[at] += amount;
            out.gross[at] += amount * use.length;
        }
    }
    return out;
}

}  // namespace gristwright::allocation
