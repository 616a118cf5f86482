// Colours as people write them: a name of the table ("teal"), or red, green and blue as "#4a8c8c".
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "engine/yarn/colour.hpp"

namespace gristwright::catalog {

// One or several, between commas. Throws Refused for what is neither a name nor "#...".
std::vector<Colour> read_colours(const std::string& text, const SpokenWords& spoken);

// "#4a8c8c"
std::string hexadecimal(const Colour& colour);

}  // namespace gristwright::catalog
