// The same flow written out by hand: a second, independent bound.
#pragma once

#include <cstdint>
#include <memory>
#include <utility>
#include <vector>

#include "engine/allocation/network.hpp"

namespace gristwright::allocation {

class PlainNetwork {
  public:
    // `arcs[j]` is how many arcs lead from piece j to the sink; `may_meet[i][j]` leaves out pairs
    // that are never used.
    PlainNetwork(const std::vector<std::vector<bool>>& may_meet,
                 const std::vector<std::size_t>& arcs);
    ~PlainNetwork();
    PlainNetwork(const PlainNetwork&) = delete;
    PlainNetwork& operator=(const PlainNetwork&) = delete;

    void skein(std::size_t i, Cm gives);
    void meet(std::size_t i, std::size_t j, Cm most, Price cost);    // cost >= 0
    void take(std::size_t j, std::size_t arc, Cm most, Price gain);  // gain >= 0
    void must_take(std::size_t j, Cm base);                          // arc 0

    void run();
    Cm flow(std::size_t i, std::size_t j) const;
    Cm taken(std::size_t j, std::size_t arc) const;

  private:
    struct Graph;
    std::unique_ptr<Graph> graph_;
};

}  // namespace gristwright::allocation
