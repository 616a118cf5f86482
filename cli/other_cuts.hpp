// What a split takes of the other yarn, beside the one whose skeins it is about.
#pragma once

#include <optional>
#include <string>

#include "cli/split_asked.hpp"

namespace gristwright::cli {

// The main project at the size that it gets, where another yarn has a part in it.
std::optional<Plan> shared_plan(const allocation::Split& split, const SplitAsked& asked);

// The rest of that project out of the batch's other yarn (--with "yarn 2"), at that size.
struct OtherCuts {
    Question question;
    SplitAsked asked;
    allocation::Split split;
};
std::optional<OtherCuts> other_cuts(const Arguments& arguments, const Plan& shared,
                                    const SplitAsked& first, const Question& q);

}  // namespace gristwright::cli
