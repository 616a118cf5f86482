// The sheet of a project: one side of paper to hang over the loom or lie beside the chair.
#pragma once

#include <string>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// An HTML page that prints on one side of A4 and of Letter.
std::string sheet(const JudgedPlan& judged, const Question& q);

}  // namespace gristwright::cli
