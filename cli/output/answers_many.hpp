// The answers to a spreadsheet of suggestions: as text, as a spreadsheet and as JSON.
#pragma once

#include <string>

#include "cli/bulk_answers.hpp"
#include "cli/output/new_file.hpp"

namespace gristwright::cli {

// Ranked; `all`, or the first of them.
std::string answers_text(BulkAnswers& bulk, const Question& q, bool all);

// Piece by piece, so that many take no more room than few; `bulk` and `q` outlive the pieces.
// A row for every sender: each gets a reply.
Pieces answers_csv(BulkAnswers& bulk, const Question& q);
Pieces answers_json(BulkAnswers& bulk, const Question& q);
std::string whole(const Pieces& pieces);

}  // namespace gristwright::cli
