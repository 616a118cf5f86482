// Lengths and masses that stand inside a text of the tables or templates, which say them in metric.
#pragma once

#include <string>
#include <string_view>

#include "cli/output/units.hpp"

namespace gristwright::cli {

// "leave 8 cm at each underarm" -> "leave 3 1/4 in at each underarm" where inches are wanted;
// else, and where both are, as it stands. Knows cm, mm, m and g after a number.
std::string in_units(std::string_view text, const Units& units);

}  // namespace gristwright::cli
