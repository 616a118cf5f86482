// The exact search by itself: best first, from an incumbent if there is one.
#pragma once

#include <limits>
#include <memory>
#include <optional>

#include "engine/allocation/allocate.hpp"

namespace gristwright::allocation {

// Skeins times pieces up to which a problem is mostly proven at once.
inline constexpr std::size_t small_size = 100;

struct Start {
    std::optional<CutList> incumbent{};
    Points ceiling = std::numeric_limits<Points>::max();  // no plan is worth more, as is known
    bool by_groups = true;                                // may divide into groups (grouping.hpp)
};

class Search {
  public:
    explicit Search(const Problem& problem, Start start = {});  // the problem outlives it
    ~Search();
    Search(const Search&) = delete;
    Search& operator=(const Search&) = delete;

    // Goes on until the best is proven or so many nodes have been looked at, all runs together; the
    // answers to the last question are looked at beyond them. Of the effort only who stops and who
    // watches it counts.
    Allocation run(int nodes, const Effort& effort = {});

    void learn(CutList list);  // a plan from elsewhere

  private:
    struct Tree;
    std::unique_ptr<Tree> tree_;
};

}  // namespace gristwright::allocation
