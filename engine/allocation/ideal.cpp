#include "engine/allocation/ideal.hpp"

#include <algorithm>

namespace gristwright::allocation {
namespace {

struct Earned {
    Points at_price = 0;  // the piece's worth less its yarn
    Cm need = 0, most = 0;
};

Earned earned(const Model& m, const Decisions& d, std::size_t j, Points price) {
    const auto& piece = m.piece[j];
    const Cm need = piece.least + d.fewest[j] * piece.tail;
    Earned out{piece.value - (d.fewest[j] - 1) * piece.join_cost - price * need, need,
               piece.most + d.most[j] * piece.tail};
    // The reserve may lie in a skein that stays whole: its yarn cannot be charged for.
    if (!piece.opens) out.at_price = 0;
    for (const auto& s : piece.stretch)
        out.at_price += std::max<Points>(0, s.per_cm - price) * s.length;
    return out;
}

Points ideal_of_skein(const Model& m, const Decisions& d, std::size_t i, Points price) {
    return d.opened[i] == Say::yes ? price * m.length[i]
                                   : std::max(m.bonus[i], price * m.length[i]);
}

std::vector<Points> prices(const Model& m) {
    std::vector<Points> out{0};
    for (std::size_t i = 0; i < m.skeins; ++i)
        if (m.length[i] > 0) out.push_back(m.bonus[i] / m.length[i]);
    for (const auto& piece : m.piece) {
        out.push_back(piece.value / piece.least);
        for (const auto& s : piece.stretch) out.push_back(s.per_cm);
    }
    return out;
}

// A table over all subsets from what each member adds.
template <class Sum, class Of>
std::vector<Sum> over_subsets(std::size_t members, Of of) {
    std::vector<Sum> out(std::size_t{1} << members);
    for (std::size_t x = 0; x < members; ++x)
        for (Set others = 0; others < Set{1} << x; ++others)
            out[others | Set{1} << x] = out[others] + of(x);
    return out;
}

}  // namespace

Points Ideal::worth_at(const Model& m, const Decisions& d, Points price) const {
    Points sum = 0;
    for (std::size_t i = 0; i < m.skeins; ++i) sum += ideal_of_skein(m, d, i, price);
    for (std::size_t j = 0; j < m.pieces; ++j) {
        const auto profit = earned(m, d, j, price).at_price;
        if (d.made[j] != Say::no)
            sum += d.made[j] == Say::yes ? profit : std::max<Points>(0, profit);
    }
    return sum;
}

void Ideal::fill_pieces(const Model& m, const Decisions& d) {
    const auto of = [&](std::size_t j) { return earned(m, d, j, price_); };
    need_ = over_subsets<Cm>(m.pieces, [&](std::size_t j) { return of(j).need; });
    most_ = over_subsets<Cm>(m.pieces, [&](std::size_t j) { return of(j).most; });
    profit_ = over_subsets<Points>(m.pieces, [&](std::size_t j) { return of(j).at_price; });
    best_profit_ = over_subsets<Points>(m.pieces, [&](std::size_t j) {
        return d.made[j] == Say::yes ? of(j).at_price : std::max<Points>(0, of(j).at_price);
    });
    joins_within_ = over_subsets<int>(m.pieces, [&](std::size_t j) { return d.fewest[j] - 1; });
    more_joins_ =
        over_subsets<int>(m.pieces, [&](std::size_t j) { return d.most[j] - d.fewest[j]; });
}

Ideal::Ideal(const Model& m, const Decisions& d) {
    worth_ = worth_at(m, d, 0);
    for (const auto price : prices(m))
        if (const auto worth = worth_at(m, d, price); worth < worth_)
            worth_ = worth, price_ = price;
    length_ = over_subsets<Cm>(m.skeins, [&](std::size_t i) { return m.length[i]; });
    ideal_ = over_subsets<Points>(m.skeins,
                                  [&](std::size_t i) { return ideal_of_skein(m, d, i, price_); });
    fill_pieces(m, d);
    to_spare_ = length_.back();
    for (const auto bonus : m.bonus) bonus_ += bonus;
    for (std::size_t j = 0; j < m.pieces; ++j)
        if (!m.piece[j].opens) reserve_ |= Set{1} << j;
    join_cost_ = std::numeric_limits<Points>::max();
    for (std::size_t j = 0; j < m.pieces; ++j) {
        if (d.made[j] == Say::yes) to_spare_ -= need_[std::size_t{1} << j];
        if (d.most[j] > d.fewest[j])
            join_cost_ = std::min(join_cost_, m.piece[j].join_cost + price_ * m.piece[j].tail);
    }
    if (join_cost_ == std::numeric_limits<Points>::max()) join_cost_ = 0;
}

}  // namespace gristwright::allocation
