// The first bound of a node: its decisions as a flow, everything undecided taken at its best.
#pragma once

#include <vector>

#include "engine/allocation/decisions.hpp"
#include "engine/allocation/network.hpp"

namespace gristwright::allocation {

class FlowBound {
  public:
    explicit FlowBound(const Model& model);

    // The most that any plan under these (concluded) decisions is worth; nothing when there is no
    // plan. Fills the lengths below.
    std::optional<Points> bound(const Decisions& d);

    Cm gross(std::size_t i, std::size_t j) const { return gross_[i * model_.pieces + j]; }
    Cm gross_of(std::size_t j) const;
    // What must flow before the piece counts as made, under the decisions of the last bound.
    Cm base(std::size_t j) const { return base_[j]; }

    // The plan that the last bound found, when every decision of it is taken (nothing open): exact.
    CutList plan(const Problem& problem) const;

  private:
    struct Slope {
        Cm length = 0;
        Price gain = 0;
    };
    // The falling slopes of a piece's worth over its gross length, from nothing, bent upwards to be
    // concave where it is not.
    std::vector<Slope> hull(const Decisions& d, std::size_t j) const;
    Price offer(const Decisions& d, std::size_t j, Cm fixed);
    void offer_skeins(const Decisions& d);

    const Model& model_;
    Network network_;
    std::vector<Cm> gross_, base_, fixed_;
    std::vector<std::vector<Slope>> slopes_;
    bool overfull_ = false;  // more is fixed to flow into a piece than it can take
};

}  // namespace gristwright::allocation
