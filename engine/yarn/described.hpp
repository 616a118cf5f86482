// A yarn known only by how it is sold: its count, or its length to a weight.
#pragma once

#include <optional>
#include <string_view>

#include "engine/units/quantity.hpp"

namespace gristwright {

// "8/2 cotton", "16/2 linen", "2/20 Nm", "12/2 worsted", "Nm 6/1", "R 50 tex/2", "300 tex",
// "400m/100g", "3360yd/lb". The smaller of two numbers is the strands folded: 8/2 and 2/8 are one
// yarn. Throws Refused for what is none, and for a count whose system the words do not settle: wool
// is sold by two, 13 % apart.
LinearDensity read_described_yarn(std::string_view text);

// "Nm 6/1", "R 50 tex/2", "300 den": its first words say a count's system.
bool begins_as_a_count(std::string_view text);

// What the same words say of its fibre. Share of it that is wool or other hair; nothing where they
// name no fibre.
std::optional<double> described_hair(std::string_view text);
// Ashenhurst's C: cotton's, linen's or worsted's.
double described_close_packing(std::string_view text);

}  // namespace gristwright
