// The answers to a spreadsheet of suggestions: as text, as a spreadsheet and as JSON.
#pragma once

#include <string>

#include "cli/bulk_answers.hpp"

namespace gristwright::cli {

// Ranked; `all`, or the first of them.
std::string answers_text(BulkAnswers& bulk, const Question& q, bool all);
// A row for every sender: each gets a reply.
std::string answers_csv(BulkAnswers& bulk, const Question& q);
std::string answers_json(BulkAnswers& bulk, const Question& q);

}  // namespace gristwright::cli
