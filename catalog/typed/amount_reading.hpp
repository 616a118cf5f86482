// How much yarn something takes, as patterns and people write it: "400y", "150-200 yards" (its
// upper end), "3 x 50g", "4 oz (440 yd)". A count of balls alone says nothing and is asked.
#pragma once

#include <optional>
#include <string>

#include "engine/units/quantity.hpp"

namespace gristwright::catalog {

struct AmountOfYarn {
    std::optional<Length> length;
    std::optional<Mass> mass;  // only where no length was said
};

// Throws Refused, Unclear where it can mean two things, Unreadable.
AmountOfYarn read_amount(const std::string& text);

}  // namespace gristwright::catalog
