// What was read in a suggestion, told to the person who answers it: as a line and as JSON.
#pragma once

#include <string>

#include "cli/output/json.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

// "beanie as hat; not known: brioche; assumed: the template's ideal size; answered with ..."
std::string taken_line(const SuggestionAnswer& answer, const Units& units);

// The object "taken" of docs/schema/answers.json: what was said, not what was chosen.
Json taken_json(const SuggestionAnswer& answer);

}  // namespace gristwright::cli
