#include "engine/suitability/reasons.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/project/by_cloth.hpp"

namespace gristwright {
namespace {

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

std::string knitted_cover(const KnitCloth& k) {
    return fmt::format("cover: tightness {:.2f}, {:.2f} to {:.2f} wanted", k.tightness,
                       k.wanted.low, k.wanted.high);
}

std::string woven_cover(const WovenCloth& w) {
    return fmt::format("cover: {:.0f} % of the greatest sett, {:.0f} to {:.0f} % wanted",
                       100 * w.share, 100 * w.wanted.low, 100 * w.wanted.high);
}

std::string cover_sentence(const Plan& plan) {
    return by_cloth(plan.pieces.front(), knitted_cover, woven_cover);
}

bool too_open(const PlanPiece& piece) {
    return by_cloth(
        piece, [](const KnitCloth& k) { return k.tightness < k.wanted.low; },
        [](const WovenCloth& w) { return w.share < w.wanted.low; });
}

std::string fineness_sentence(const Factor& f, const Plan& plan) {
    if (f.desirability >= 1)
        return fmt::format("fineness: a usual weight for a {}", plan.article->article);
    return fmt::format("fineness: {:.0f} weight class{} {} than a {} is usually made in",
                       std::abs(f.had - f.wanted), std::abs(f.had - f.wanted) > 1.5 ? "es" : "",
                       f.had < f.wanted ? "finer" : "thicker", plan.article->article);
}

std::string short_against(FactorName name, const Factor& f, const Plan& plan) {
    switch (name) {
        case FactorName::definition:
            return "stitches will blur";
        case FactorName::drape:
            return "hangs stiffly";
        case FactorName::softness:
            return "may prickle";
        case FactorName::wear:
            return "wears and pills";
        case FactorName::warmth:
            return "not so warm";
        case FactorName::elasticity:
            return "little spring";
        case FactorName::warp_fitness:
            return "delicate as warp";
        case FactorName::consistency:
            return "skeins differ";
        case FactorName::cover:
            return too_open(plan.pieces.front()) ? "cloth more open than it should be"
                                                 : "cloth firmer than it should be";
        case FactorName::fineness:
            return fmt::format("{} yarn than usual for it", f.had < f.wanted ? "finer" : "thicker");
        case FactorName::equipment:
            return plan.obstacles.empty() ? "" : std::string(words(plan.obstacles.front()));
    }
    return "";
}

std::string_view short_for(FactorName name) {
    switch (name) {
        case FactorName::definition:
            return "stitches read clearly";
        case FactorName::drape:
            return "drapes";
        case FactorName::softness:
            return "soft enough";
        case FactorName::wear:
            return "wears well";
        case FactorName::warmth:
            return "warm";
        case FactorName::elasticity:
            return "springy";
        case FactorName::warp_fitness:
            return "stands as warp";
        case FactorName::consistency:
            return "skeins match";
        default:
            return "";
    }
}

constexpr double worth_saying = 0.04;  // a trait is not known to less (judgement)

// Less than the least wanted, and dearly enough to be worth saying.
bool lacks(FactorName name, const Factor& f) {
    const bool below = name == FactorName::cover || name == FactorName::fineness ||
                       f.had < f.wanted - worth_saying;
    return below && f.cost >= 1;
}

// Needs say whether a yarn is fit for a warp and warm enough, once for all articles; else one yarn
// "stands" as warp here and is "delicate" there.
bool said_only_by_need(FactorName name, const Plan& plan) {
    return plan.article->calling &&
           (name == FactorName::warp_fitness || name == FactorName::warmth);
}

// A need has said it already, with its reason.
bool said_by_need(FactorName name, const Judgement& judged) {
    const auto trait = trait_of(name);
    return trait && std::any_of(judged.unmet.begin(), judged.unmet.end(), [&](const Needed& need) {
               return need.demand->trait == trait && need.cost >= 1;
           });
}

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

std::string sentence(FactorName name, const Judgement& judged, const Plan& plan,
                     const YarnProfile& yarn) {
    const auto& f = judged.factor(name);
    if (name == FactorName::cover) return cover_sentence(plan);
    if (name == FactorName::fineness) return fineness_sentence(f, plan);
    if (name == FactorName::equipment)
        return plan.obstacles.empty() ? "equipment: nothing stands in the way"
                                      : fmt::format("equipment: {}", words(plan.obstacles.front()));
    auto out = fmt::format("{} {:.2f}, at least {:.2f} wanted", words(name), f.had, f.wanted);
    const auto trait = trait_of(name);
    if (!trait) return out;
    const auto& reasons = yarn.trait(*trait).reasons;
    for (std::size_t r = 0; r < std::min<std::size_t>(2, reasons.size()); ++r)
        out += (r == 0 ? ": " : ", ") + reasons[r];
    return out;
}

std::string remedy(FactorName name, const Judgement& judged, const Plan& plan) {
    if (!lacks(name, judged.factor(name))) return "";
    switch (name) {
        case FactorName::definition:
            return "more twist, a third ply or combed fibre; or a plainer stitch";
        case FactorName::drape:
            return plan.article->craft == Craft::knitted ? "a larger needle" : "a wider sett";
        case FactorName::softness:
            return "finer fibre, or wear it over a collar";
        case FactorName::wear:
            return "another ply, more twist, or keep it from rubbing";
        case FactorName::warmth:
            return "a loftier carded yarn";
        case FactorName::elasticity:
            return "a crimpier wool; knit ribs on a smaller needle";
        case FactorName::warp_fitness:
            return "more ply twist; tug-test a length, or use another yarn as warp";
        case FactorName::consistency:
            return "alternate skeins every two rows, or use the odd skein for a border";
        case FactorName::cover:
            return plan.article->craft == Craft::knitted ? "another needle, after a swatch"
                                                         : "another heddle";
        case FactorName::fineness:
            return judged.factor(name).had < plan.article->finest
                       ? "hold it double, or choose something finer"
                       : "choose something in thicker yarn";
        case FactorName::equipment:
            return "borrow what is missing, or choose another plan";
    }
    return "";
}

std::vector<std::string> against(const Judgement& judged, const Plan& plan,
                                 const YarnProfile& yarn) {
    std::vector<std::string> out;
    for (const auto& need : judged.unmet)
        if (need.cost >= 1) out.push_back(need.demand->reason);
    for (const auto name : ordered(judged, costs_more))
        if (lacks(name, judged.factor(name)) && !said_by_need(name, judged) &&
            !said_only_by_need(name, plan))
            out.push_back(short_against(name, judged.factor(name), plan));
    if (yarn.agreement.answer == SameYarn::differ) out.emplace_back("the skeins are several yarns");
    return out;
}

std::vector<std::string> in_favour(const Judgement& judged, const YarnProfile& yarn) {
    std::vector<std::string> out;
    const bool differ = yarn.agreement.answer == SameYarn::differ;
    for (const auto name : ordered(judged, counts_for_more)) {
        if (name == FactorName::consistency && (differ || yarn.skeins.size() < 2))
            continue;  // even where it hardly matters
        const auto& f = judged.factor(name);
        const auto said = short_for(name);
        if (f.weight >= 0.3 && f.wanted >= 0.3 && f.had >= f.wanted && !said.empty() &&
            !said_by_need(name, judged))
            out.emplace_back(said);
    }
    return out;
}

}  // namespace gristwright
