// What would sharpen an answer: the measurements that are missing, and how a range would narrow.
#pragma once

#include <string>
#include <vector>

#include "engine/yarn/profile.hpp"

namespace gristwright {

enum class Measurement { swatch, wraps, washed_lengths, finer_scale, ply_twist, fibre };

struct [[nodiscard]] Hint {
    Measurement take{};
    double before = 0, after = 0;  // relative margins that it bears on; 0: what firms up has none
    std::string skein = "";        // finer_scale: the one whose mass is known least
};

// Those that narrow most first; of a swatch until one is known.
std::vector<Hint> what_sharpens(const YarnProfile& yarn);

}  // namespace gristwright
