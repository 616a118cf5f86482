#include "engine/suitability/reasons.hpp"

#include <algorithm>
#include <utility>

#include "engine/project/by_cloth.hpp"
#include "engine/suitability/constants.hpp"

namespace gristwright {
namespace {

// Needs say whether a yarn is fit for a warp and warm enough, once for all articles; else one yarn
// "stands" as warp here and is "delicate" there.
bool said_only_by_need(FactorName name, const Plan& plan) {
    return plan.article->calling &&
           (name == FactorName::warp_fitness || name == FactorName::warmth);
}

// The yarn's own qualities can be praised; a usual weight or a needle at hand is nothing of its
// own.
bool can_be_praised(FactorName name) { return trait_of(name) || name == FactorName::consistency; }

bool costs_more(const Factor& a, const Factor& b) { return a.cost > b.cost; }

bool counts_for_more(const Factor& a, const Factor& b) {
    return a.weight * a.wanted > b.weight * b.wanted;
}

std::vector<FactorName> ordered(const Judgement& judged,
                                bool (*before)(const Factor&, const Factor&)) {
    std::vector<FactorName> names;
    for (std::size_t f = 0; f < factor_count; ++f) names.push_back(static_cast<FactorName>(f));
    std::stable_sort(names.begin(), names.end(), [&](FactorName a, FactorName b) {
        return before(judged.factor(a), judged.factor(b));
    });
    return names;
}

}  // namespace

std::optional<TraitName> trait_of(FactorName name) {
    switch (name) {
        case FactorName::definition:
            return TraitName::definition;
        case FactorName::softness:
            return TraitName::softness;
        case FactorName::wear:
            return TraitName::wear;
        case FactorName::warmth:
            return TraitName::warmth;
        case FactorName::elasticity:
            return TraitName::elasticity;
        case FactorName::warp_fitness:
            return TraitName::warp_fitness;
        case FactorName::drape:
            return TraitName::drape;
        default:
            return {};
    }
}

bool said_by_need(FactorName name, const Judgement& judged) {
    const auto trait = trait_of(name);
    return trait && std::any_of(judged.unmet.begin(), judged.unmet.end(), [&](const Needed& need) {
               return need.demand->trait == trait && need.cost >= 1;
           });
}

// Less than the least wanted, and dearly enough to be worth saying.
bool lacks(FactorName name, const Judgement& judged) {
    const auto& f = judged.factor(name);
    const bool below = name == FactorName::cover || name == FactorName::fineness ||
                       f.had < f.wanted - constants::factor_worth_saying;
    return below && f.cost >= 1;
}

bool too_open(const PlanPiece& piece) {
    return by_cloth(
        piece, [](const KnitCloth& k) { return k.tightness < k.wanted.low; },
        [](const WovenCloth& w) { return w.share < w.wanted.low; });
}

std::vector<Objection> against(const Judgement& judged, const Plan& plan, const YarnProfile& yarn) {
    std::vector<std::pair<double, Objection>> dear;
    for (const auto& need : judged.unmet)
        if (need.cost >= 1) dear.push_back({need.cost, {need.demand, {}}});
    for (const auto name : ordered(judged, costs_more))
        if (lacks(name, judged) && !said_by_need(name, judged) && !said_only_by_need(name, plan))
            dear.push_back({judged.factor(name).cost, {nullptr, name}});
    std::stable_sort(dear.begin(), dear.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<Objection> out;
    for (auto& [cost, objection] : dear) out.push_back(std::move(objection));
    if (yarn.agreement.answer == SameYarn::differ) out.emplace_back();
    return out;
}

std::vector<FactorName> in_favour(const Judgement& judged, const YarnProfile& yarn) {
    std::vector<FactorName> out;
    const bool differ = yarn.agreement.answer == SameYarn::differ;
    for (const auto name : ordered(judged, counts_for_more)) {
        if (name == FactorName::consistency && (differ || yarn.skeins.size() < 2))
            continue;  // even where it hardly matters
        const auto& f = judged.factor(name);
        if (f.weight >= constants::worth_praising && f.wanted >= constants::worth_praising &&
            f.had >= f.wanted && can_be_praised(name) && !said_by_need(name, judged))
            out.push_back(name);
    }
    return out;
}

}  // namespace gristwright
