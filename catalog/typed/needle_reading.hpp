// Needles as people name them: in millimetres, or by the US, the old UK or the Japanese size.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/spoken.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright::catalog {

// "4mm", "US 6", "UK 8", "4 mm (US 6)". A bare "4" may be several sizes and is asked; "4.5" is mm,
// since no other system has it. Throws Unreadable, Unclear.
Length read_needle(const std::string& text, const SpokenWords& spoken);

// "3mm, 3.5mm, 4mm", "US 6, US 7", "3, 3.5 and 4 mm": the texts of a list apart, a unit or a system
// that stands once going with each.
std::vector<std::string> apart(const std::string& text);

}  // namespace gristwright::catalog
