// A part of a problem as a problem of its own, and its answer back in the whole.
#pragma once

#include "engine/allocation/problem.hpp"

namespace gristwright::allocation {

struct Part {
    std::vector<std::size_t> skeins, pieces;  // of the whole, in the part's order
    bool reserve = false;                     // it keeps the whole's reserve

    Problem problem(const Problem& whole) const;    // relations to pieces left out are dropped
    CutList from_whole(const CutList& list) const;  // without its worth
    void add_to_whole(const CutList& list, CutList& whole) const;
};

}  // namespace gristwright::allocation
