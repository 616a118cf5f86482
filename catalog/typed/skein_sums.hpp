// Totals under a table of skeins.
#pragma once

#include <vector>

#include "catalog/typed/batch_text.hpp"

namespace gristwright::catalog {

// Whether the last, which has no name, holds the sums of all the others.
bool sums_up(const std::vector<SkeinText>& skeins);

}  // namespace gristwright::catalog
