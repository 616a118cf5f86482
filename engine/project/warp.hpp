// A warp out of several skeins: whole ends from each, so that no end has a join in it.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

struct WarpShare {
    std::size_t skein = 0;
    int ends = 0;
    Length used;
};

// Ends in the order of the skeins, as many from each as it holds whole, until there are `ends`.
// Fewer where the skeins do not hold them. `each` > 0.
std::vector<WarpShare> share_warp(const std::vector<Length>& skeins, int ends, Length each);

// Mass to hang on one end for a minute before a warp is measured of such yarn.
Mass hung_on_an_end(LinearDensity grist);

}  // namespace gristwright
