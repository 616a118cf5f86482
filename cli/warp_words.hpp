// What to do before a warp is measured of this batch: its strength, its size, its skeins.
#pragma once

#include <string>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// Empty: the plan's warp is not of this batch.
std::string warp_text(const Plan& plan, const Question& q);

}  // namespace gristwright::cli
