// How big a suggested thing is to be, as a sheet's cell or an option says it.
#pragma once

#include <optional>
#include <string>

#include "catalog/reference/spoken.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright::catalog {

// One of the three.
struct SizeSaid {
    std::optional<Length> length;  // "150 cm"
    std::string age;               // of who wears it: "18 month old"
    std::string words;             // to be read with the idea: "size 60 x 8 in", "adult small"
};

// Throws Unclear, and Refused for what is no size.
SizeSaid read_size(const std::string& text, const SpokenWords& spoken);

}  // namespace gristwright::catalog
