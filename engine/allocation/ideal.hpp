// What all skeins and pieces would be worth if yarn could be bought and sold at one price per cm
// and cost neither joins nor remnants, and how far a group at least falls short of that.
#pragma once

#include <algorithm>
#include <bit>
#include <vector>

#include "engine/allocation/group.hpp"

namespace gristwright::allocation {

class Ideal {
  public:
    // At the price that makes the ideal worth least: it bounds every plan (duality). The model and
    // the decisions are only looked at here.
    Ideal(const Model& model, const Decisions& decisions);

    Points worth() const { return worth_; }

    // No promise for this group is worth more; `never` when there is none. Takes no time.
    Points at_most(const Group& group) const {
        const Cm length = length_[group.skeins], need = need_[group.pieces];
        const int joins = std::popcount(group.skeins) - 1 - joins_within_[group.pieces];
        if (length < need || length - need > to_spare_ || joins > more_joins_[group.pieces])
            return never;
        if ((group.pieces & ~reserve_) == 0) return bonus_;
        const Points gross = std::min(length, most_[group.pieces]);
        return profit_[group.pieces] + price_ * gross - std::max(0, joins) * join_cost_;
    }
    // By how much a group of this worth falls short of the ideal.
    Points shortfall(const Group& group, Points worth) const {
        return ideal_[group.skeins] + best_profit_[group.pieces] - worth;
    }

  private:
    Points worth_at(const Model& model, const Decisions& d, Points price) const;
    void fill_pieces(const Model& model, const Decisions& d);

    Points price_ = 0, worth_ = 0;
    Cm to_spare_ = 0;       // what all required pieces leave over
    Points join_cost_ = 0;  // of the cheapest join
    Set reserve_ = 0;       // it opens no skein: the bonus is kept
    Points bonus_ = 0;      // of all skeins
    // By set of skeins: their length, and their ideal worth.
    std::vector<Cm> length_;
    std::vector<Points> ideal_;
    // By set of pieces: gross metres, what they earn at the price, joins.
    std::vector<Cm> need_, most_;
    std::vector<Points> profit_, best_profit_;
    std::vector<int> joins_within_, more_joins_;
};

}  // namespace gristwright::allocation
