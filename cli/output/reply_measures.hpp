// What a reply says of measures and of whom it is for: gauge, needle, width, loom, weight, wearer.
// Each a sentence, or empty.
#pragma once

#include <string>

#include "cli/output/units.hpp"
#include "engine/suggestion/answer.hpp"

namespace gristwright::cli {

std::string gauge_sentence(const SuggestionAnswer& a, const Suggestion& s, const Units& units);
std::string needle_sentence(const SuggestionAnswer& a, const Suggestion& s, const Units& units);
std::string width_sentence(const SuggestionAnswer& a, const Units& units);
std::string unclear_size_sentence(const SuggestionAnswer& a, const Units& units);
std::string loom_sentence(const SuggestionAnswer& a, const Units& units);
// A warp or a waste that was said; yarn of their own that they ask of; "half a blanket"; another
// fibre than this yarn's.
std::string warp_length_sentence(const SuggestionAnswer& a, const Units& units);
std::string at_hand_sentence(const SuggestionAnswer& a, const Units& units);
std::string share_sentence(const SuggestionAnswer& a, const Units& units);
std::string material_sentence(const SuggestionAnswer& a);

std::string weight_sentence(const SuggestionAnswer& a, const YarnProfile& yarn);
std::string wearer_sentence(const SuggestionAnswer& a, const Units& units);
// "How old the niece may be I do not know": kin of any age.
std::string kin_sentence(const SuggestionAnswer& a);

}  // namespace gristwright::cli
