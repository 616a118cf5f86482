// catalog/tables/cautions.csv: what can hurt somebody, and when it is said.
#pragma once

#include <string>
#include <vector>

#include "engine/caution/caution.hpp"

namespace gristwright::catalog {

// Throws BadText with the line for a missing column, an unknown mark, or a brief that is too long.
std::vector<Caution> read_cautions(const std::string& text, const std::string& file);

}  // namespace gristwright::catalog
