// What a plan asks for next: yarn to set aside, and a sample that would let it grow.
#pragma once

#include <optional>

#include "engine/project/plan.hpp"

namespace gristwright {

struct SetAside {
    Mass mass;
    double share = 0;  // of the batch
};
// Of this batch, so that the plan has what it asks for; nothing when all of it is too little.
std::optional<SetAside> to_set_aside(const Plan& plan, const YarnProfile& yarn);

// The size that a sample of the plan's craft, washed and measured, would let the article have, with
// nothing else changed. Nothing: there is such a sample, or it would not grow.
std::optional<Length> size_after_sample(const Plan& plan, const YarnProfile& yarn);

}  // namespace gristwright
