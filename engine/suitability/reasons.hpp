// What is worth saying for a yarn in an article and against it, as values; the words for them stand
// in cli/output/reason_words.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "engine/suitability/judgement.hpp"

namespace gristwright {

// The trait behind a factor; nothing: it is none of the yarn's traits.
std::optional<TraitName> trait_of(FactorName name);

// A wish that is not met, dearly enough to be worth saying.
bool lacks(FactorName name, const Judgement& judged);

// An unmet need says it already, with its reason.
bool said_by_need(FactorName name, const Judgement& judged);

// Whether the cloth is more open than it should be, not firmer.
bool too_open(const PlanPiece& piece);

// What counts against: a need that is not met, or a wish; where neither, that the skeins are
// several yarns.
struct Objection {
    std::shared_ptr<const Demand> need;
    std::optional<FactorName> wish;
};

// Strongest first: what counts against (more than a point lost), and the wishes that are met and
// weigh something.
std::vector<Objection> against(const Judgement& judged, const Plan& plan, const YarnProfile& yarn);
std::vector<FactorName> in_favour(const Judgement& judged, const YarnProfile& yarn);

}  // namespace gristwright
