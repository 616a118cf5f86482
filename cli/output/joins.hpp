// Where each skein ends in an article, through all its pieces in the order of the work, one skein
// after another in the batch's order, or two by turns where they differ.
#pragma once

#include <string>
#include <vector>

#include "cli/output/assembled.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright::cli {

struct Join {
    std::size_t skein = 0;  // that ends
    std::size_t part = 0;   // of the assembled article's
    bool in_warp = false;   // else in a row, a round or a pick
    int number = 0;         // of the row, the pick or the end, from 1
    Line line;              // across the part, in cm
};

// Of what a plan takes from this batch, as it most likely needs it. Nothing where it is one skein.
std::vector<Join> joins(const Assembled& article, const Plan& plan, const YarnProfile& yarn);

// "A ends, row 147", "A ends, pick 310", "A ends, warp end 57".
std::string words(const Join& join, const Assembled& article, const std::string& skein);

}  // namespace gristwright::cli
