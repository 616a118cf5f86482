// What to write back to somebody: plain, polite, short, with the numbers that matter.
#pragma once

#include <string>

#include "cli/output/units.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

inline constexpr std::size_t reply_length = 500;  // characters

// At most `most` characters; whole sentences only, those left out that matter least. In the units
// that the suggestion was written in.
std::string reply(const Suggestion& suggestion, const SuggestionAnswer& answer,
                  const YarnProfile& yarn, const Units& units, std::size_t most = reply_length);

// "enough", "enough if smaller", "short by 40 m"; or "asked back".
std::string metres_verdict(const SuggestionAnswer& answer, const Units& units);

}  // namespace gristwright::cli
