#include "engine/suitability/ranking.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/suitability/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

// The share of the batch that goes into it, as many alike together as a person wants.
double share_used(const Plan& plan) {
    const auto& calling = plan.article->calling;
    const int alike = std::clamp(times_over(plan), 1, calling ? calling->alike : 1);
    return std::min(1.0, alike * (plan.need.mid / plan.have.mid));
}

// Joined from dozens of small pieces: chosen for the way of making, seldom for the yarn.
bool is_pieced(const Template& article) {
    return std::any_of(article.pieces.begin(), article.pieces.end(),
                       [](const auto& piece) { return piece.count >= many_pieces; });
}

double calling(const JudgedPlan& j) {
    const double used = std::min(1.0, share_used(j.plan) / well_used);
    return calls_for(j) * (1 - use_weight + use_weight * used);
}

// A plan and what puts it before others of its part.
struct Placed {
    JudgedPlan* judged;
    double worth;
};
using Row = std::vector<Placed>;

void put_in_order(Row& row) {
    std::sort(row.begin(), row.end(), [](const Placed& a, const Placed& b) {
        if (a.worth != b.worth) return a.worth > b.worth;
        return a.judged->plan.article->name < b.judged->plan.article->name;
    });
}

bool has_kind(const Row& row, const std::string& kind) {
    return std::any_of(row.begin(), row.end(), [&](const Placed& placed) {
        return placed.judged->plan.article->article == kind;
    });
}

// Three of different kinds that serve at all, and up to six while they serve well.
bool belongs_to_best(const JudgedPlan& j, const Row& best) {
    if (best.size() >= 6 || has_kind(best, j.plan.article->article)) return false;
    return best.size() < 3 || serves(calls_for(j)) == Serves::well;
}

std::vector<JudgedPlan> moved(const Row& row) {
    std::vector<JudgedPlan> out;
    out.reserve(row.size());
    for (const auto& placed : row) out.push_back(std::move(*placed.judged));
    return out;
}

// One that the metres reach for before one they do not.
const JudgedPlan* best_of(const std::vector<JudgedPlan>& plans, Craft craft) {
    const JudgedPlan* best = nullptr;
    const auto key = [](const JudgedPlan& j) {
        return std::pair(j.plan.reach != Reach::short_of, j.judgement.score);
    };
    for (const auto& j : plans)
        if (j.plan.article->craft == craft && (!best || key(j) > key(*best))) best = &j;
    return best;
}

std::optional<JudgedPlan> copied(const JudgedPlan* plan) {
    return plan ? std::optional(*plan) : std::nullopt;
}

BestSet set_from(std::initializer_list<const std::vector<JudgedPlan>*> parts) {
    std::vector<Judged> plans;
    for (const auto* part : parts)
        for (const auto& judged : *part) plans.push_back({&judged.plan, calls_for(judged)});
    return best_set(plans);
}

}  // namespace

double calls_for(const JudgedPlan& j) {
    const auto& article = *j.plan.article;
    double way = article.calling ? article.calling->place : 1;
    if (is_pieced(article)) way *= pieced_calls;
    if (j.plan.second_yarn > Length{}) way *= another_calls;
    return way * j.judgement.score;
}

JudgedPlan judged_plan(const Template& article, const YarnProfile& yarn, const Fabrics& fabrics,
                       const Equipment& owned, const Request& request) {
    return judged_plan(std::make_shared<const Template>(article), yarn, fabrics, owned, request);
}

JudgedPlan judged_plan(std::shared_ptr<const Template> article, const YarnProfile& yarn,
                       const Fabrics& fabrics, const Equipment& owned, const Request& request) {
    JudgedPlan out;
    out.plan = plan(std::move(article), yarn, fabrics, owned, request);
    out.judgement = judge(out.plan, yarn);
    return out;
}

Ranked sorted_out(std::vector<JudgedPlan> plans) {
    Row also, samples, short_of, unfit;
    for (auto& j : plans) {
        const bool falls_short = j.plan.reach == Reach::short_of;
        if (j.plan.article->sample && !falls_short)
            samples.push_back({&j, j.judgement.score});
        else if (serves(j.judgement.score) >= Serves::poorly)
            unfit.push_back({&j, j.judgement.score});
        else if (falls_short)
            short_of.push_back({&j, -j.plan.short_by.si()});
        else
            also.push_back({&j, calling(j)});
    }
    for (auto* row : {&also, &samples, &short_of, &unfit}) put_in_order(*row);
    Row best, rest;
    for (const auto& placed : also)
        (belongs_to_best(*placed.judged, best) ? best : rest).push_back(placed);
    return {moved(best), moved(rest), moved(samples), moved(short_of), moved(unfit)};
}

Ranked ranked(const Templates& templates, const YarnProfile& yarn, const Fabrics& fabrics,
              const Equipment& owned, const Request& request, std::string_view craft) {
    std::vector<JudgedPlan> plans;
    plans.reserve(templates.size());
    for (const auto& article : templates)
        if (craft.empty() || craft == words(article.craft))
            plans.push_back(judged_plan(templates.shared(article), yarn, fabrics, owned, request));
    return sorted_out(std::move(plans));
}

int times_over(const Plan& plan) {
    if (plan.reach == Reach::short_of || !(plan.need.mid.si() > 0)) return 0;
    const double aside = set_aside(plan.asked, plan.need.spread, plan.have.spread);
    return std::max(1, static_cast<int>(plan.have.mid / plan.need.mid / aside));
}

BestSet best_set_of(const Ranked& ranked) {
    const auto best = set_from({&ranked.best});
    return best.members.size() >= 2 ? best : set_from({&ranked.best, &ranked.also});
}

Pair best_pair(const std::vector<JudgedPlan>& plans) {
    return {copied(best_of(plans, Craft::knitted)), copied(best_of(plans, Craft::woven))};
}

std::string pair_verdict(const JudgedPlan& knitted, const JudgedPlan& woven) {
    const bool knitted_short = knitted.plan.reach == Reach::short_of;
    const bool woven_short = woven.plan.reach == Reach::short_of;
    if (knitted_short && woven_short) return "The yarn reaches for neither.";
    if (knitted_short || woven_short)
        return fmt::format("The yarn reaches only for the {} one.",
                           knitted_short ? "woven" : "knitted");
    const double ahead = knitted.judgement.score - woven.judgement.score;
    if (std::abs(ahead) < 5) return "The yarn serves both about alike: choose by hand and loom.";
    return fmt::format("The yarn serves the {} one better, by {:.0f} points.",
                       ahead > 0 ? "knitted" : "woven", std::abs(ahead));
}

}  // namespace gristwright
