// The number of plies as people write it.
#pragma once

#include <string>

#include "catalog/reference/spoken.hpp"

namespace gristwright::catalog {

// "2-ply", "two ply", "2x2 cable", "3-ply chain": how many singles lie side by side; 0 for none.
int count_of_plies(const std::string& typed, const SpokenWords& spoken);

}  // namespace gristwright::catalog
