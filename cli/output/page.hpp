// A batch as one HTML page: no script, no network, every text from people escaped.
#pragma once

#include <functional>
#include <string>

#include "cli/question.hpp"
#include "cli/ranking.hpp"

namespace gristwright::cli {

// Markup of the sections that were asked for; empty: not asked.
struct PageSections {
    std::string split{}, answers{}, kept{}, two{};
    // The command that writes an article's sheet; nothing: not said.
    std::function<std::string(const std::string& article)> sheet{};
    std::string poster{};  // the command that writes the line-up for a wall; empty: not said
};

std::string page(const Question& q, const Ranked& ranked, const PageSections& sections);

// A figure the page leans on, and where it comes from.
struct Leaned {
    std::string what, mark, source;
};
// Of the yarn's own figures and of these plans' fabrics; each once, those without a source last.
std::vector<Leaned> leaned_on(const Question& q, const std::vector<const JudgedPlan*>& plans);

}  // namespace gristwright::cli
