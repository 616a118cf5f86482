// Where in the work a length of this batch's yarn is used up: the pieces in the order in which they
// are worked, each as often as it is made; of a woven piece its warp, then its weft.
#pragma once

#include <string>
#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright::cli {

struct Stretch {
    const PlanPiece* piece = nullptr;  // of the plan, which must outlive it
    int which = 1;                     // of its pieces alike, from 1
    bool warp = false;
    Length begins, ends;  // of the yarn, from the beginning of the work
};

// The stretches of the work, none of them empty.
std::vector<Stretch> stretches(const Plan& plan);

struct YarnPlace {
    const PlanPiece* piece = nullptr;
    int which = 1;
    bool warp = false;
    double share = 0;  // of its rows, or of its woven length
};

// Where the work stands when that much is used; at the end of the last when it is more.
YarnPlace place_after(const std::vector<Stretch>& work, Length used);

// Rows worked there, or 0 for a warp and for what is woven.
int rows_at(const YarnPlace& place);

}  // namespace gristwright::cli
