// What a reply says of the yarn in the thing: the part it plays, and what it lacks. Each a
// sentence, or empty.
#pragma once

#include <string>

#include "cli/output/units.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

std::string role_sentence(const SuggestionAnswer& a, const Units& units);
// The dearest factor in a few plain words; empty when nothing is lost.
std::string character_sentence(const SuggestionAnswer& a);

}  // namespace gristwright::cli
