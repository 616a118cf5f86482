#include "cli/output/why_not.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <vector>

#include "cli/output/article_words.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/ranking.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t most_reasons = 2;
constexpr double decides = 4;         // points from which a loss decides anything
constexpr double clearly_better = 8;  // points by which another of its kind is worth naming

struct DecidingLoss {
    double cost;
    std::string what, would_serve;
};

std::vector<DecidingLoss> deciding_losses(const JudgedPlan& judged, const YarnProfile& yarn) {
    std::vector<DecidingLoss> out;
    for (const auto& need : judged.judgement.unmet)
        out.push_back({need.cost, need.demand->reason, need.demand->remedy});
    for (std::size_t f = 0; f < factor_count; ++f) {
        const auto name = static_cast<FactorName>(f);
        const auto& factor = judged.judgement.factor(name);
        if (factor.weight > 0 && name != FactorName::equipment)
            out.push_back({factor.cost, sentence(name, judged.judgement, judged.plan, yarn),
                           remedy(name, judged.judgement, judged.plan)});
    }
    std::erase_if(out, [](const DecidingLoss& loss) { return loss.cost < decides; });
    std::stable_sort(out.begin(), out.end(),
                     [](const DecidingLoss& a, const DecidingLoss& b) { return a.cost > b.cost; });
    if (out.size() > most_reasons) out.resize(most_reasons);
    return out;
}

// Of the same kind one that this yarn serves clearly better, and for which it reaches.
std::string instead(const JudgedPlan& judged, const Question& q) {
    const auto ranked = rank(q);
    const JudgedPlan* best = nullptr;
    for (const auto* part : {&ranked.best, &ranked.also})
        for (const auto& j : *part)
            if (j.plan.article->article == judged.plan.article->article &&
                (!best || j.judgement.score > best->judgement.score))
                best = &j;
    if (!best || best->judgement.score < judged.judgement.score + clearly_better) return "";
    return fmt::format("Of its kind it serves {} better: {:.0f} of 100 ({}).",
                       best->plan.article->title, best->judgement.score, best->plan.article->name);
}

}  // namespace

std::string why_not(const JudgedPlan& judged, const Question& q) {
    const auto& plan = judged.plan;
    auto out = wrapped(judged_in_words(judged) + ".", 0) + "\n";
    const auto found = deciding_losses(judged, q.yarn);
    for (const auto& loss : found)
        out += labelled("-",
                        loss.would_serve.empty()
                            ? loss.what
                            : fmt::format("{}; would serve: {}", loss.what, loss.would_serve),
                        2) +
               "\n";
    if (plan.reach == Reach::short_of)
        out += labelled("-", "the yarn: " + reach_line(plan, q.units), 2) + "\n";
    for (const auto obstacle : plan.obstacles) out += labelled("-", words(obstacle), 2) + "\n";
    if (found.empty() && plan.reach != Reach::short_of && plan.obstacles.empty())
        out += wrapped("Nothing stands against it: make it.", 0) + "\n";
    if (const auto other = instead(judged, q); !other.empty()) out += wrapped(other, 0) + "\n";
    return out;
}

}  // namespace gristwright::cli
