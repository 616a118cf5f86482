// The relaxed problem as a flow: skeins give, pieces take, the cheapest way.
//
// source -> skein -> piece -> sink, and source -> skein -> sink for what is left. Built once; only
// capacities and prices change from node to node of the search. A piece takes through several arcs:
// its base first, then its stretches. A base that must be filled carries a reward so large that it
// is filled wherever it can be: whoever asks looks whether it was.
#pragma once

#include <cstdint>
#include <memory>
#include <utility>
#include <vector>

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

// Millionths of a micro-point: fine enough that slopes rounded up leave no ghost gaps.
using Price = std::int64_t;
inline constexpr Price price_unit = 1'000'000;

class Network {
  public:
    // `arcs[j]` is how many arcs lead from piece j to the sink; `may_meet[i][j]` leaves out pairs
    // that are never used.
    Network(const std::vector<std::vector<bool>>& may_meet, const std::vector<std::size_t>& arcs);
    ~Network();
    Network(const Network&) = delete;
    Network& operator=(const Network&) = delete;

    void skein(std::size_t i, Cm gives);
    void meet(std::size_t i, std::size_t j, Cm most, Price cost);  // cost >= 0
    // gain >= 0, falling from arc to arc of a piece: they fill in this order.
    void take(std::size_t j, std::size_t arc, Cm most, Price gain);
    void must_take(std::size_t j, Cm base);  // arc 0

    void run();
    Cm flow(std::size_t i, std::size_t j) const;
    Cm taken(std::size_t j, std::size_t arc) const;

  private:
    struct Graph;
    std::unique_ptr<Graph> graph_;
};

}  // namespace gristwright::allocation
