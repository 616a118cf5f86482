// The words for a judgement: for and against, each with its numbers and what would raise it.
#pragma once

#include <string>
#include <vector>

#include "engine/suitability/judgement.hpp"

namespace gristwright {

// One factor in words: "definition 0.35 of the 0.60 wanted: carded and fuzzy".
std::string sentence(FactorName name, const Judgement& judged, const Plan& plan,
                     const YarnProfile& yarn);
// What would raise it; empty when nothing is lost.
std::string remedy(FactorName name, const Judgement& judged, const Plan& plan);

// Short reasons, strongest first: what counts against (more than a point lost), and what speaks
// for.
std::vector<std::string> against(const Judgement& judged, const Plan& plan,
                                 const YarnProfile& yarn);
std::vector<std::string> in_favour(const Judgement& judged, const YarnProfile& yarn);

}  // namespace gristwright
