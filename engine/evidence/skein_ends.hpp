// Where one skein ends and the next begins in the work.
#pragma once

#include "engine/evidence/yarn_places.hpp"

namespace gristwright {

struct SkeinEnd {
    std::size_t skein = 0;  // of those given, the one that ends
    YarnPlace place;
};

// The skeins used in the order given, where the work takes `factor` times the metres that were
// planned; without those that came to their end in the metres `used`. The last skein has no such
// end, nor one that the work does not need whole.
std::vector<SkeinEnd> skein_ends(const Plan& plan, const std::vector<Length>& skeins,
                                 double factor = 1, Length used = {});

}  // namespace gristwright
