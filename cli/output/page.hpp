// A batch as one HTML page: no script, no network, every text from people escaped.
#pragma once

#include <string>

#include "cli/question.hpp"
#include "cli/ranking.hpp"

namespace gristwright::cli {

// Markup of the sections that were asked for; empty: not asked.
struct PageSections {
    std::string split, answers, kept;
};

std::string page(const Question& q, const Ranked& ranked, const PageSections& sections);

// A figure the page leans on, and where it comes from.
struct Leaned {
    std::string what, mark, source;
};
// Of the yarn's own figures and of these plans' fabrics; each once, those without a source last.
std::vector<Leaned> leaned_on(const Question& q, const std::vector<const JudgedPlan*>& plans);

}  // namespace gristwright::cli
