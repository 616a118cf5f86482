// What the person owns. Empty or zero means "not said": then nothing is ruled out, and said so.
#pragma once

#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

struct Equipment {
    std::vector<Sett> heddles;    // of the rigid heddles or reeds
    Length loom_width;            // weaving width; 0: not said
    int shafts = 0;               // 2: one rigid heddle; 0: not said
    std::vector<Length> needles;  // diameters
};

}  // namespace gristwright
