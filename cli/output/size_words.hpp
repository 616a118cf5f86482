// The size of an article in the few words that a line of a table has room for.
#pragma once

#include <string>

#include "cli/output/units.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

// "150 x 22 cm" of what is one straight piece measured by its length; else what is measured, in a
// word, and its size: "head 56 cm", "chest 96 cm".
std::string short_size(const Plan& plan, const Units& units);

// True where the metres make it smaller than it ought to be.
bool smaller_than_ideal(const Plan& plan);

}  // namespace gristwright::cli
