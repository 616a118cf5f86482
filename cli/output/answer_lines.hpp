// Answers to many suggestions, one a line.
#pragma once

#include <string>

#include "cli/bulk_answers.hpp"

namespace gristwright::cli {

// The first `most` in the order of their rank; those that are asked back come after them.
std::string answer_lines(BulkAnswers& bulk, std::size_t most, const Question& q);

}  // namespace gristwright::cli
