// What skeins and pieces that hang together are worth at most.
#pragma once

#include <cstdint>
#include <limits>
#include <vector>

#include "engine/allocation/decisions.hpp"

namespace gristwright::allocation {

using Set = std::uint32_t;  // a bit for each skein, or each piece

inline bool holds(Set set, std::size_t x) { return (set >> x & 1) != 0; }
inline Set all(std::size_t count) { return (Set{1} << count) - 1; }

struct Group {
    Set skeins = 0, pieces = 0;
};

// So little that no plan can be worth it, and small enough for two of them to be added.
inline constexpr Points never = std::numeric_limits<Points>::min() / 4;

// A connected graph has at least one edge fewer than it has vertices (from memory), so that a group
// of k skeins needs k - 1 joins, however it is cut. Counted are the cheapest of these, the cheapest
// of its skeins for each piece as if it had them alone, and the best stretches for all metres that
// are left. The model and the decisions outlive it.
class GroupPromise {
  public:
    GroupPromise(const Model& model, const Decisions& decisions);

    // No plan in which these skeins serve these pieces, all of them and no others, and all hang
    // together, earns more of them. `never`: there is no such plan.
    Points of(const Group& group);

  private:
    struct Member {
        Points join = 0;
        Cm tail = 0;
        int more = 0;  // joins that it may take beyond the fewest
    };

    bool add_skeins(const Group& group);
    bool add_piece(const Group& group, std::size_t j);
    Points joined();

    const Model& m_;
    const Decisions& d_;
    std::vector<std::vector<std::size_t>> cheapest_;  // by piece: the skeins that may serve it
    std::vector<Cm> least_;                           // by set of pieces: gross, whatever the joins
    // Of the group looked at: what it earns so far, the metres left, the joins still wanted.
    Points sum_ = 0;
    Cm left_ = 0;
    int joins_ = 0;
    std::vector<Member> members_;
    std::vector<Stretch> stretches_;
};

}  // namespace gristwright::allocation
