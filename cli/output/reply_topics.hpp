// What a question is answered with beside the verdict: a sentence for each topic.
#pragma once

#include <string>

#include "cli/output/units.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

// "56 cm round the head", "150 cm across".
std::string measured(const Template& t, const std::string& size);

// Empty where the reply's own numbers answer it already. Without an article (not answered) it is
// about the yarn itself.
std::string topic_sentence(Topic topic, const SuggestionAnswer& answer, const YarnProfile& yarn,
                           const Units& units);

}  // namespace gristwright::cli
