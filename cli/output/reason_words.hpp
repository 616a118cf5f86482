// The words for and against a yarn in an article, each factor with its numbers and what would raise
// it.
#pragma once

#include <string>
#include <vector>

#include "engine/suitability/reasons.hpp"

namespace gristwright::cli {

// One factor in words: "definition 0.35 of the 0.60 wanted: carded and fuzzy".
std::string sentence(FactorName name, const Judgement& judged, const Plan& plan,
                     const YarnProfile& yarn);
// What would raise it; empty when nothing is lost.
std::string remedy(FactorName name, const Judgement& judged, const Plan& plan);

// In a few words each: "may prickle", "soft enough".
std::vector<std::string> said_against(const Judgement& judged, const Plan& plan,
                                      const YarnProfile& yarn);
std::vector<std::string> said_in_favour(const Judgement& judged, const YarnProfile& yarn);

}  // namespace gristwright::cli
