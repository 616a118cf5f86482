// The plan that a command's words and options ask for: the article, the batch's part in it, for
// whom or how large.
#pragma once

#include <string>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

struct PlanAsked {
    JudgedPlan judged;
    std::string sized;  // where --for decides the size: how; else empty
};

// `article` as it is typed: a template's name or title, or a file. `q` learns of the other yarn,
// of two strands and of the size. Throws Refused for what the article cannot be.
PlanAsked plan_asked(const Arguments& arguments, const std::string& article, Question& q);

}  // namespace gristwright::cli
