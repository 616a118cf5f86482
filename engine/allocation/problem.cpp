#include "engine/allocation/problem.hpp"

#include <fmt/core.h>

#include <stdexcept>

namespace gristwright::allocation {
namespace {

void insist(bool holds, const std::string& what) {
    if (!holds) throw std::invalid_argument(what);
}

constexpr Cm longest = 10'000'000;             // 100 km: beyond any batch, safely below overflow
constexpr Points dearest = 1'000'000'000'000;  // a million points

void check_piece(const Piece& piece) {
    insist(piece.least > 0 && piece.most() <= longest,
           fmt::format("{}: its length must lie between 0 and 100 km", piece.name));
    insist(piece.value >= 0 && piece.value <= dearest && piece.join_cost >= 0 &&
               piece.join_cost <= dearest && piece.max_joins >= 0,
           fmt::format("{}: value, join cost and joins cannot be below 0", piece.name));
    for (std::size_t s = 0; s < piece.stretch.size(); ++s) {
        insist(piece.stretch[s].length >= 0 && piece.stretch[s].per_cm <= dearest / 1000,
               fmt::format("{}: a stretch is out of range", piece.name));
        insist(s == 0 || piece.stretch[s].per_cm <= piece.stretch[s - 1].per_cm,
               fmt::format("{}: the worth of its stretches must not rise", piece.name));
    }
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
    for (const auto& skein : p.skeins)
        insist(skein.length >= 0 && skein.length <= longest && skein.bonus >= 0 &&
                   skein.bonus <= dearest,
               fmt::format("{}: length or bonus out of range", skein.name));
    for (const auto& piece : p.pieces) check_piece(piece);
    insist(p.tail >= 0 && p.shortest >= 0 && p.reserve >= 0, "tail, segment and reserve are >= 0");
    insist(p.mismatch.empty() || p.mismatch.size() == p.skeins.size(),
           "mismatch has a row for every skein");
    for (const auto& row : p.mismatch) {
        insist(row.size() == p.pieces.size(), "mismatch has a column for every piece");
        for (const auto& cost : row)
            insist(!cost || (*cost >= 0 && *cost <= dearest / 1000), "a mismatch is out of range");
    }
    for (const auto* pairs : {&p.same, &p.different})
        for (const auto& [a, b] : *pairs)
            insist(a < p.pieces.size() && b < p.pieces.size() && a != b,
                   "a relation names a piece that is not there");
}

}  // namespace gristwright::allocation
