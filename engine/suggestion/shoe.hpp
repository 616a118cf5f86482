// The foot that a shoe size is made for.
#pragma once

#include <optional>
#include <string_view>

#include "engine/units/quantity.hpp"

namespace gristwright {

// "44", "EU 39", "UK 7", "US men's 10": the length of the foot. Nothing where the system is not
// told: a plain "9" is another foot in each country, and children's numbers begin anew.
std::optional<Length> foot_of_shoe(std::string_view said, bool of_a_child);

}  // namespace gristwright
