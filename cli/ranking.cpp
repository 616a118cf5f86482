#include "cli/ranking.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace gristwright::cli {
namespace {

bool better(const JudgedPlan& a, const JudgedPlan& b) {
    if (a.judgement.score != b.judgement.score) return a.judgement.score > b.judgement.score;
    return a.plan.article->name < b.plan.article->name;
}

std::vector<JudgedPlan>& part_of(const JudgedPlan& judged, Ranked& ranked) {
    if (serves(judged.judgement.score) == Serves::not_at_all) return ranked.useless;
    if (judged.plan.reach == Reach::short_of) return ranked.short_of;
    if (judged.plan.article->sample) return ranked.samples;
    return judged.plan.need.mid >= judged.plan.have.mid * 0.5 ? ranked.large : ranked.small;
}

// The best of a craft, or nullptr; one that the metres reach for before one they do not.
const JudgedPlan* best_of(const std::vector<JudgedPlan>& plans, Craft craft) {
    const JudgedPlan* best = nullptr;
    const auto key = [](const JudgedPlan& j) {
        return std::pair(j.plan.reach != Reach::short_of, j.judgement.score);
    };
    for (const auto& j : plans)
        if (j.plan.article->craft == craft && (!best || key(j) > key(*best))) best = &j;
    return best;
}

}  // namespace

Ranked rank(const Question& q, std::string_view craft) {
    Ranked out;
    for (const auto& article : q.catalogue.templates) {
        if (!craft.empty() && craft != words(article.craft)) continue;
        auto judged = judged_plan(article, q);
        part_of(judged, out).push_back(std::move(judged));
    }
    for (auto* part : {&out.large, &out.small, &out.samples, &out.useless})
        std::sort(part->begin(), part->end(), better);
    std::sort(out.short_of.begin(), out.short_of.end(),
              [](const auto& a, const auto& b) { return a.plan.short_by < b.plan.short_by; });
    return out;
}

BestSet best_set_of(const Ranked& ranked) {
    std::vector<Judged> plans;
    for (const auto* part : {&ranked.large, &ranked.small})
        for (const auto& judged : *part) plans.push_back({&judged.plan, judged.judgement.score});
    return best_set(plans);
}

Pair best_pair(const std::vector<JudgedPlan>& plans) {
    return {best_of(plans, Craft::knitted), best_of(plans, Craft::woven)};
}

std::string pair_verdict(const JudgedPlan& knitted, const JudgedPlan& woven) {
    const bool knitted_short = knitted.plan.reach == Reach::short_of;
    const bool woven_short = woven.plan.reach == Reach::short_of;
    if (knitted_short && woven_short) return "The metres reach for neither.";
    if (knitted_short || woven_short)
        return fmt::format("The metres reach only for the {} one.",
                           knitted_short ? "woven" : "knitted");
    const double ahead = knitted.judgement.score - woven.judgement.score;
    if (std::abs(ahead) < 5) return "The yarn serves both about alike: choose by hand and loom.";
    return fmt::format("The yarn serves the {} one better, by {:.0f} points.",
                       ahead > 0 ? "knitted" : "woven", std::abs(ahead));
}

}  // namespace gristwright::cli
