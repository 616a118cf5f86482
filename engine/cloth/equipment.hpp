// What the person owns. Empty lists mean "not said": then the usual range is assumed.
#pragma once

#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

struct Equipment {
    std::vector<Sett> heddles;    // ends per metre of each heddle or reed
    Length loom_width;            // 0: not said
    int shafts = 2;               // 2: rigid heddle (plain weave and pick-up)
    std::vector<Length> needles;  // diameters; empty: any
    bool has_loom() const { return !heddles.empty() || loom_width.si() > 0; }
};

}  // namespace gristwright
