#include "engine/allocation/problem.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cstdlib>
#include <stdexcept>

#include "engine/units/failure.hpp"

namespace gristwright::allocation {
namespace {

void insist(bool holds, std::string_view what) {
    if (!holds) throw Refused(std::string(what));
}
void insist(bool holds, const std::string& name, std::string_view what) {
    if (!holds) throw Refused(fmt::format("{}: {}", name, what));
}

constexpr Cm longest_yarn = 10'000'000;  // 100 km: beyond any batch
// The search counts in millionths of a micro-point: with these its sums stay below 2^63, and the
// reward that fills what must be filled outweighs everything else.

void check_piece(const Piece& piece) {
    insist(piece.least > 0 && piece.least <= longest_yarn, piece.name,
           "its length must lie between 0 and 100 km");
    insist(piece.value >= 0 && piece.value <= dearest && piece.join_cost >= 0 &&
               piece.join_cost <= dearest && piece.max_joins >= 0,
           piece.name, "value, join cost or joins are out of range");
    insist(piece.value / piece.least <= dearest_per_cm, piece.name, "too dear for its length");
    for (std::size_t s = 0; s < piece.stretch.size(); ++s) {
        const auto& stretch = piece.stretch[s];
        insist(stretch.length >= 0 && stretch.length <= longest_yarn &&
                   std::abs(stretch.per_cm) <= dearest_per_cm,
               piece.name, "a stretch is out of range");
        insist(s == 0 || stretch.per_cm <= piece.stretch[s - 1].per_cm, piece.name,
               "the worth of its stretches must not rise");
    }
    insist(piece.most() <= longest_yarn, piece.name, "stretches beyond 100 km");
}

void check_skein(const Skein& skein) {
    insist(skein.length >= 0 && skein.length <= longest_yarn, skein.name,
           "its length must lie between 0 and 100 km");
    insist(
        skein.bonus >= 0 && skein.bonus <= dearest && skein.bonus <= dearest_per_cm * skein.length,
        skein.name, "its bonus is out of range");
}

void check_mismatch(const Problem& p) {
    insist(p.mismatch.empty() || p.mismatch.size() == p.skeins.size(),
           "mismatch has a row for every skein");
    for (const auto& row : p.mismatch) {
        insist(row.size() == p.pieces.size(), "mismatch has a column for every piece");
        for (const auto& cost : row)
            insist(!cost || (*cost >= 0 && *cost <= dearest_per_cm), "a mismatch is out of range");
    }
}

// No sum that the search makes may be too large: gains, joins and mismatch each by themselves.
void check_totals(const Problem& p) {
    using Wide = long double;  // exact enough for a limit, and cannot overflow
    Wide gains = 0, joins = 0, mismatch = 0;
    for (const auto& skein : p.skeins) gains += static_cast<Wide>(skein.bonus);
    for (const auto& piece : p.pieces) {
        gains += static_cast<Wide>(piece.value);
        for (const auto& s : piece.stretch)
            gains += static_cast<Wide>(s.length) * static_cast<Wide>(std::abs(s.per_cm));
        joins +=
            static_cast<Wide>(piece.join_cost) *
            static_cast<Wide>(std::min(static_cast<std::size_t>(piece.max_joins), p.skeins.size()));
    }
    for (std::size_t i = 0; i < p.mismatch.size(); ++i) {
        Points worst = 0;
        for (const auto& cost : p.mismatch[i]) worst = std::max(worst, cost.value_or(0));
        mismatch += static_cast<Wide>(worst) * static_cast<Wide>(p.skeins[i].length);
    }
    insist(gains <= dearest && joins <= dearest && mismatch <= dearest,
           "all together the worth or cost is beyond two million points");
}

}  // namespace

bool CutList::makes(std::size_t piece) const {
    for (const auto& cut : cuts)
        if (cut.piece == piece) return true;
    return false;
}

Cm CutList::taken_from(std::size_t skein) const {
    Cm sum = 0;
    for (const auto& cut : cuts)
        if (cut.skein == skein) sum += cut.gross;
    return sum;
}

void check(const Problem& p) {
    for (const auto& skein : p.skeins) check_skein(skein);
    for (const auto& piece : p.pieces) check_piece(piece);
    insist(p.tail >= 0 && p.shortest >= 0 && p.reserve >= 0 && p.tail <= longest_yarn &&
               p.shortest <= longest_yarn && p.reserve <= longest_yarn,
           "tail, shortest segment and reserve must lie between 0 and 100 km");
    check_mismatch(p);
    check_totals(p);
    for (const auto* pairs : {&p.same, &p.different})
        for (const auto& [a, b] : *pairs)
            insist(a < p.pieces.size() && b < p.pieces.size() && a != b,
                   "a relation names a piece that is not there");
}

}  // namespace gristwright::allocation
