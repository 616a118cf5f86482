// What a batch is for: every article of a catalogue judged, and sorted into what the yarn is best
// at, what it serves too, what is made to learn from, what the metres do not reach for and what it
// does not serve.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/project/templates.hpp"
#include "engine/suitability/best_set.hpp"

namespace gristwright {

struct JudgedPlan {
    Plan plan;
    Judgement judgement;
};

JudgedPlan judged_plan(std::shared_ptr<const Template> article, const YarnProfile& yarn,
                       const Fabrics& fabrics, const Equipment& owned, const Request& request);
// With a copy of its own.
JudgedPlan judged_plan(const Template& article, const YarnProfile& yarn, const Fabrics& fabrics,
                       const Equipment& owned, const Request& request);

// Best first; `short_of` by the metres that lack.
struct Ranked {
    std::vector<JudgedPlan> best;      // what it is for: at most six, of different kinds
    std::vector<JudgedPlan> also;      // also serves
    std::vector<JudgedPlan> samples;   // made to learn from
    std::vector<JudgedPlan> short_of;  // it would serve, but the metres do not reach
    std::vector<JudgedPlan> unfit;     // serves poorly or not: wasted on it, or a need unmet
};

// How well it is served, as far as such a thing is what handspun is spun for and can be begun with
// what is there.
double calls_for(const JudgedPlan& judged);

// Of the plans that serve, those come first that the yarn serves best and that use it: an article
// that leaves most of a batch unused is not what the batch is for.
Ranked sorted_out(std::vector<JudgedPlan> plans);

// Every template judged and sorted. `craft`: "knitted", "woven", or empty for both.
Ranked ranked(const Templates& templates, const YarnProfile& yarn, const Fabrics& fabrics,
              const Equipment& owned, const Request& request, std::string_view craft = "");

// How many of it the batch makes at the plan's size with the certainty asked; 0 when it falls
// short.
int times_over(const Plan& plan);

// Built from what the yarn is for; from what it serves too only when that makes no set.
BestSet best_set_of(const Ranked& ranked);

// The same kind of article in the template of each craft that this yarn serves best.
struct Pair {
    std::optional<JudgedPlan> knitted, woven;
};
Pair best_pair(const std::vector<JudgedPlan>& plans);

// "The yarn serves the woven one better, by 12 points."
std::string pair_verdict(const JudgedPlan& knitted, const JudgedPlan& woven);

}  // namespace gristwright
