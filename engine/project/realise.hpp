// The pieces of a plan at one size: whole repeats, their metres, the yarn that is needed.
//
// An implementation header of plan().
#pragma once

#include <vector>

#include "engine/project/costs.hpp"

namespace gristwright {

// Sizes are whole centimetres: the largest that is no larger.
Length whole_size(Length size);

void realise_at(Length size, const std::vector<Costed>& costed, const YarnProfile& yarn,
                double spread, Plan& out);

// The largest from `size` down to `smallest` whose metres the batch has with the certainty asked.
void realise_largest(Length size, Length smallest, const std::vector<Costed>& costed,
                     const YarnProfile& yarn, double spread, Plan& out);

}  // namespace gristwright
