#include "engine/suitability/ranking.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/project/by_cloth.hpp"
#include "engine/suitability/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

constexpr std::size_t fewest_named = 3, few_named = 4, most_named = 6;

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

bool is_hard_fulled(const Plan& plan) {
    return by_cloth(
        plan.pieces.front(), [](const KnitCloth& k) { return k.fabric->fulled; },
        [&](const WovenCloth&) { return plan.article->finish == Finish::hard_fulled; });
}

// How well the ordinary yarn in the middle serves it; 0: not compared.
double serves_any(const Template& article) {
    if (!article.calling || article.calling->levels.empty()) return 0;
    const auto& levels = article.calling->levels;
    return levels[levels.size() / 2];
}

// From 0, as large as it ought to be, to 1, the smallest that is of use; a little smaller than it
// ought to be matters little (a quadratic loss).
double falls_short(const Plan& plan) {
    const auto& article = *plan.article;
    const auto way = article.ideal - article.smallest;
    if (!(way > Length{})) return 0;
    const double missing = std::clamp((article.ideal - plan.size) / way, 0.0, 1.0);
    return missing * missing;
}

double calling(const JudgedPlan& j) {
    const double used = std::min(1.0, share_used(j.plan) / well_used);
    return calls_for(j) * (1 - use_weight + use_weight * used) *
           (1 - choosy_weight * serves_any(*j.plan.article)) *
           (1 - smaller_weight * falls_short(j.plan));
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

// Of one kind by what it is, or by what is done to it: one that is fulled speaks for all of them.
bool alike(const Plan& a, const Plan& b) {
    return a.article->article == b.article->article || (is_hard_fulled(a) && is_hard_fulled(b));
}

// What an article is worth behind those that are named; 0: it is not to be named. Three of
// different kinds that serve at all, a fourth that serves, up to six that serve well; a second of a
// kind, never a third, only among the first four and only if it serves well.
double worth_behind(const Row& named, const Placed& next) {
    const auto& plan = next.judged->plan;
    const auto how = serves(calls_for(*next.judged));
    const auto before = std::count_if(named.begin(), named.end(), [&](const Placed& one) {
        return alike(one.judged->plan, plan);
    });
    if (before > 0)
        return before < 2 && named.size() < few_named && how == Serves::well
                   ? named_again * next.worth
                   : 0;
    const auto most = how == Serves::well     ? most_named
                      : how == Serves::fairly ? few_named
                                              : fewest_named;
    return named.size() < most ? next.worth : 0;
}

// Taken out of `row`, which stays in its order.
Row taken_to_be_named(Row& row) {
    Row named;
    for (;;) {
        auto best = row.end();
        double most = 0;
        for (auto next = row.begin(); next != row.end(); ++next)
            if (const double worth = worth_behind(named, *next); worth > most)
                most = worth, best = next;
        if (best == row.end()) return named;
        named.push_back(*best);
        row.erase(best);
    }
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
    if (is_hard_fulled(j.plan)) way *= fulled_calls;
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
        const bool out_of_reach = j.plan.reach == Reach::short_of;
        if (j.plan.article->sample && !out_of_reach)
            samples.push_back({&j, j.judgement.score});
        else if (serves(j.judgement.score) >= Serves::poorly)
            unfit.push_back({&j, j.judgement.score});
        else if (out_of_reach)
            short_of.push_back({&j, -j.plan.short_by.si()});
        else
            also.push_back({&j, calling(j)});
    }
    for (auto* row : {&also, &samples, &short_of, &unfit}) put_in_order(*row);
    const auto best = taken_to_be_named(also);
    return {moved(best), moved(also), moved(samples), moved(short_of), moved(unfit)};
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
