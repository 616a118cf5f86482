// What the person owns. Empty or zero means "not said": then nothing is ruled out, and said so.
#pragma once

#include <optional>
#include <vector>

#include "engine/cloth/heddle.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

struct Equipment {
    std::vector<Heddle> heddles{};       // rigid heddles or reeds
    Length loom_width{};                 // weaving width; 0: not said
    int shafts = 0;                      // 2: one rigid heddle; 0: not said
    std::vector<Length> needles{};       // diameters
    std::optional<Length> loom_waste{};  // of one end; else what the article's loom usually wastes
    std::optional<Length> fringe{};      // at each end of what has a fringe; else the article's
    SoldBy sold_by = SoldBy::to_10_cm;   // how heddles are sold where the person lives
    std::optional<Sett> sett{};          // that is wanted: then no heddle is chosen for another
};

}  // namespace gristwright
