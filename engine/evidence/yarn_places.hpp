// The work on a plan in its order, as stretches that take this batch's yarn, and where it stands
// when so much of the yarn is used.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

struct Stretch {
    std::size_t piece = 0;  // of the plan's
    int which = 1;          // of its pieces alike, from 1
    bool warp = false;
    Length begins, ends;  // of the yarn, from the beginning of the work
};

// None of them empty, the pieces in the order of work of the template (project/order.hpp). A loom's
// warp is wound for all alike before the first is woven; on pins each is warped and woven by
// itself.
std::vector<Stretch> stretches(const Plan& plan);

struct YarnPlace {
    std::size_t piece = 0;
    int which = 1;
    bool warp = false;
    double share = 0;  // of its rows, its woven length or its ends, as they are worked
};

// Where the work stands when that much is used; at the end of the last when it is more.
YarnPlace place_after(const Plan& plan, const std::vector<Stretch>& work, Length used);

// Rows, picks or ends that are whole there, and the one in work, from 1.
int done_at(const Plan& plan, const YarnPlace& place);
int in_work_at(const Plan& plan, const YarnPlace& place);

// The share of a piece's yarn that a share of its rows takes, and the rows that yarn makes, as the
// piece is worked: some tapers begin with their narrow end.
double yarn_by_row(const PlanPiece& piece, double rows_share);
double row_by_yarn(const PlanPiece& piece, double yarn_share);

}  // namespace gristwright
