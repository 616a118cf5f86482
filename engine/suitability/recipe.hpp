// The judgement turned round: of which fibres, and how spun, would a yarn serve this article best?
#pragma once

#include <string>
#include <vector>

#include "engine/project/plan.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright {

struct Recipe {
    std::vector<std::string> fibres;  // of different kinds, in the order given
    Preparation preparation = Preparation::unknown;
    Draw draw = Draw::unknown;
    int plies = 2;
    double twist_low = 0, twist_high = 0;  // plied; turns per inch / sqrt(worsted count)
    double singles_turns = 1;              // of the singles, for each plied turn
    double score = 0;                      // of the best fibre

    // Linear density of one ply before plying, of the yarn's.
    double singles_share() const;
};

// Tries every fibre with every ordinary way of spinning it at this grist, and takes the way that
// its three best fibres serve best. `fibres`, the commonest first, must hold one
// that is no group of breeds.
Recipe recipe_for(const Template& article, LinearDensity grist,
                  const std::vector<FibrePart>& fibres, const YarnTables& tables,
                  const Fabrics& fabrics);

}  // namespace gristwright
