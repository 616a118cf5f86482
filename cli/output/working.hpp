// The working: each step of an answer with its numbers, the figures it used, their marks and
// sources, so that a person can disagree with one and change it.
#pragma once

#include <string>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// "losses of fibre = 0.1 (0.05 to 0.15) [judgement: ...]"
std::string figure_line(const Constant& constant, std::size_t indent);

std::string yarn_working(const Question& q);
std::string plan_working(const JudgedPlan& judged, const Question& q);

// Which figures a working leaves out, and where they stand.
std::string not_shown();

}  // namespace gristwright::cli
