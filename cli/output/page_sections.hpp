// The sections of a page that stand only when they were asked for, as markup.
#pragma once

#include <string>
#include <vector>

#include "cli/bulk_answers.hpp"
#include "cli/split_asked.hpp"

namespace gristwright::cli {

// Skein bars, what each wish gets, and the cut list.
std::string split_section(const allocation::Split& split, const SplitAsked& asked,
                          const Question& q);

struct Answered {
    Suggestion suggestion;
    SuggestionAnswer answer;
    std::size_t times = 1;  // suggested so often, near alike
};
// Best first.
std::vector<Answered> ranked_answers(BulkAnswers& bulk);

// Shows the first forty and counts the others.
// What the notebook holds of a remembered batch beside its measurements.
struct KeptWork {
    std::vector<catalog::SwatchText> swatches;
    std::optional<catalog::ProjectText> project;
    std::vector<catalog::WeighingText> weighings;
    Arguments arguments{};  // of the page: where the notebook is
};
// Another yarn beside this one, or this one as it would be.
std::string two_section(const Question& a, const Question& b);
// Empty where nothing is kept.
std::string kept_section(const KeptWork& work, const Question& q);

// What of the sheet is not in the answers, all of it: rows that have a line of their own, and cells
// that are named below.
struct NotAnswered {
    std::vector<BadRow> refused;
    std::vector<std::string> cells;  // "row 3: needs: ..."
};
NotAnswered not_answered(const BulkAnswers& bulk);

std::string answers_section(const std::vector<Answered>& answers, const NotAnswered& unread,
                            const Question& q);

}  // namespace gristwright::cli
