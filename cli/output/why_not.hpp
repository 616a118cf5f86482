// Why not this article with this yarn: the one or two needs that decide, in words.
#pragma once

#include <string>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// The dearest needs and wishes first, each with what would meet it; then metres and equipment.
std::string why_not(const JudgedPlan& judged, const Question& q);

}  // namespace gristwright::cli
