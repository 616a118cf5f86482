// The catalogue's articles ranked for one batch, and the same article in both crafts.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/output/describe.hpp"
#include "engine/suitability/best_set.hpp"

namespace gristwright::cli {

// Parts: what uses half the batch or more, smaller things, what is made to learn from, what the
// metres do not reach for, and what this yarn does not serve. Each best first; `short_of` by the
// metres that lack.
struct [[nodiscard]] Ranked {
    std::vector<JudgedPlan> large, small, samples, short_of, useless;
};

// `craft`: "knitted", "woven", or empty for both.
Ranked rank(const Question& q, std::string_view craft = "");

BestSet best_set_of(const Ranked& ranked);

// The same kind of article in the template of each craft that this yarn serves best.
struct Pair {
    const JudgedPlan* knitted = nullptr;
    const JudgedPlan* woven = nullptr;
};
Pair best_pair(const std::vector<JudgedPlan>& plans);

// "The yarn serves the woven one better, by 12 points."
std::string pair_verdict(const JudgedPlan& knitted, const JudgedPlan& woven);

}  // namespace gristwright::cli
