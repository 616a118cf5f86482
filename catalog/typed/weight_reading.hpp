// The weight class of a yarn as people write it: "DK", "sport weight", "#3", "3 (light)".
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "engine/yarn/weight_class.hpp"

namespace gristwright::catalog {

// Its number. "worsted/aran" is one class; of two classes, and of "8 ply", it is asked which.
// Throws Refused.
int read_weight(const std::string& text, const std::vector<WeightClass>& classes,
                const SpokenWords& spoken);

}  // namespace gristwright::catalog
