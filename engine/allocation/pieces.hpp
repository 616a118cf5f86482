// Where each part of the articles comes from, once it is known how large they become: one mitt and
// the other, warp and weft. What is knitted in one go, body and border, stays together: a change of
// skein inside it is a join.
#pragma once

#include <string>
#include <vector>

#include "engine/allocation/allocate.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::allocation {

struct LaidPiece {
    std::size_t wish = 0;
    std::string name;  // "2 of 2", "panel, weft"; empty: the whole article or sample
    Cm length = 0;     // net
    bool unbroken = false;
    bool of_pair = false;
    bool weft = false;  // a finer skein is preferred for it
};

// The pieces of a plan from this batch, `net` shared out among them as the plan shares its metres.
// With `whole_warp` every warp is unbroken.
std::vector<LaidPiece> laid_out(const Plan& plan, std::size_t wish, Cm net, bool whole_warp);
std::size_t count_of_pieces(const Plan& plan);
// The largest share of a plan's metres that one unbroken piece takes; 0 when none must be unbroken.
double unbroken_share(const Plan& plan, bool whole_warp);

// Every piece is required at its length, in no more skeins than its wish allowed; `whole` is the
// problem whose wishes were shared out, `grist` the skeins' linear densities relative to the
// finest.
Problem placing(const Problem& whole, const std::vector<LaidPiece>& pieces,
                const std::vector<double>& grist);

}  // namespace gristwright::allocation
