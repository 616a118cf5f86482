// The third and closest bound: every skein is cut by whole patterns, and only the pieces' balance
// is paid for at prices.
//
// Lagrangian relaxation of the balance of each piece (its length and the number of skeins that
// serve it), its prices found by column generation over cutting patterns (Gilmore and Gomory,
// Operations Research 9, 1961; Geoffrion, Mathematical Programming Study 2, 1974 - from memory).
// Whatever the prices, the sum of what each skein and each piece earns at them bounds every plan:
// prices may be rough, the bound is safe.
#pragma once

#include <optional>
#include <vector>

#include "engine/allocation/mixture.hpp"

namespace gristwright::allocation {

class Cutting {
  public:
    static constexpr int most_rounds = 60;  // of prices, for one bound

    explicit Cutting(const Model& model) : model_(model) {}

    // A plan's own patterns are a good start for prices.
    void learn(const CutList& list);

    // No plan under these decisions is worth more. Stops as soon as that is `enough` or less, or
    // after so many rounds of prices (1 at least).
    Points bound(const Decisions& d, Points enough, int rounds = most_rounds);

    // After bound(): decides what a plan worth more than `enough` cannot do otherwise.
    void narrow(Decisions& d, Points enough) const;

    const Wants& wants() const { return wants_; }  // of the last bound()
    int rounds() const { return rounds_; }         // of prices, since it was made

  private:
    bool whole(const Decisions& d, std::size_t j) const { return d.most[j] == 1; }
    std::optional<Offer> offer(const Decisions& d, const Prices& at, std::size_t i,
                               std::size_t j) const;
    Pattern pattern(const Decisions& d, const Prices& at, std::size_t i, bool opened,
                    std::optional<std::size_t> must = {}) const;
    static bool holds(const SkeinPattern& cut, std::size_t j);
    double made(const Decisions& d, const Prices& at, std::size_t j) const;
    bool allowed(const Decisions& d, const SkeinPattern& cut) const;
    double price_all(const Decisions& d, const Prices& at, std::vector<SkeinPattern>& found);
    void remember(const Mixture& mixture);

    const Model& model_;
    std::vector<SkeinPattern> known_;  // patterns of earlier nodes
    Prices best_prices_;               // at which the bound of the last call came out least
    std::vector<double> piece_made_, skein_opened_, skein_whole_;  // earned at them
    double best_ = 0;
    Wants wants_;
    int rounds_ = 0;
};

}  // namespace gristwright::allocation
