// How a knitted piece gets from its first count of stitches to its last.
#pragma once

#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

// So many shaping rows, each so many rows after the one before it.
struct Run {
    int every = 0, times = 0;
};

// A count that a shaping row brings, and which row that is.
struct Reached {
    int row = 0, stitches = 0;
};

struct Shaping {
    int from = 0, to = 0, rows = 0;  // in the order of the work
    bool in_rounds = false;
    int by = 0;                    // stitches in one shaping row
    std::vector<Run> runs;         // from + by x times = to, or from - by x times
    std::vector<Reached> reached;  // instead of runs: each count by itself
    int times() const;
};

// `times` shaping rows spread over `rows`, those closer together first; they take all of them. Each
// comes a whole number of `together` rows after the one before it, where there is room for that:
// then they take all but what is left over of the last.
std::vector<Run> spread_over(int rows, int times, int together = 1);

// Of a piece whose counts are closed (counts.hpp); from = to where it is not shaped.
Shaping shaping_of(const PlanPiece& piece);

// Where a yoke's stitches lie, at the neck; four lines, if it gains eight at a time.
struct YokeParts {
    int underarm = 0;         // stitches of one underarm
    int back = 0, front = 0;  // at the neck, between its lines
    int sleeve = 0;           // at the neck, of one
};
YokeParts yoke_parts(const Plan& plan, const PlanPiece& yoke);

}  // namespace gristwright
