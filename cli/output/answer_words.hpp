// An answer to one suggestion: as text, and as JSON.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "cli/question.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

// The whole answer with a reply to paste, and the figures behind it.
std::string answer_text(const Suggestion& s, const SuggestionAnswer& a, const Question& q);
std::string answer_working(const SuggestionAnswer& a);
nlohmann::ordered_json answer_json(const Suggestion& s, const SuggestionAnswer& a,
                                   const Question& q);

// How the yarn serves and whether it reaches; what is not known comes first, as in the reply, and
// the grade of a stand-in is called its own.
std::string verdict_words(const SuggestionAnswer& a, const Units& units);

// On what was understood, for whom it was suggested.
std::vector<Caution> cautions_on_answer(const Suggestion& s, const SuggestionAnswer& a,
                                        const Question& q);
// The reply to paste, with the first of those cautions.
std::string reply_with_care(const Suggestion& s, const SuggestionAnswer& a,
                            const std::vector<Caution>& cautions, const Question& q);

}  // namespace gristwright::cli
