// What a batch makes, an article a line, and why not the rest, a reason a line.
#pragma once

#include <string>

#include "cli/question.hpp"
#include "engine/suitability/ranking.hpp"

namespace gristwright::cli {

// The parts under their headings, at most `most` articles of each.
std::string ranked_lines(const Ranked& ranked, std::size_t most, const Question& q);

// "Out of reach": what the metres do not make, and by how much they fall short.
std::string out_of_reach_lines(const std::vector<JudgedPlan>& plans, std::size_t most,
                               const Question& q);

// The articles that this yarn does not serve, by the need or the wish that decides.
struct NotServed {
    std::string why;
    std::vector<const Template*> articles;
};
std::vector<NotServed> by_reason(const std::vector<JudgedPlan>& plans, const YarnProfile& yarn);

// Each reason with the first of what it rules out, on one line.
std::string not_served_lines(const std::vector<JudgedPlan>& plans, std::size_t most,
                             const Question& q);

}  // namespace gristwright::cli
