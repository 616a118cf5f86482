// A template's steps with the plan's numbers, in the person's units.
#pragma once

#include <string>
#include <vector>

#include "cli/output/units.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

// Where both units were asked for, in metric: two of each would hide what is to be done.
std::vector<std::string> steps_of(const Plan& plan, const Units& units);

}  // namespace gristwright::cli
