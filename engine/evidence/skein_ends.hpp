// Where one skein ends and the next begins in a knitted piece.
#pragma once

#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

struct SkeinEnd {
    std::size_t skein = 0;  // of those given, the one that ends
    double rows_share = 0;  // of the piece's rows worked by then, below 1
    double row = 0;
};

// In the plan's first piece, the skeins used in the order given, where the piece takes `factor`
// times the metres that were planned; without those that came to their end in the metres `used`.
// The last skein has no such end. None are told of a woven piece, of several alike, or where
// another yarn is in it.
std::vector<SkeinEnd> skein_ends(const Plan& plan, const std::vector<Length>& skeins,
                                 double factor = 1, Length used = {});

}  // namespace gristwright
