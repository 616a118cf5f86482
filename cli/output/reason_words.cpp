#include "cli/output/reason_words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/cloth/spacing_words.hpp"
#include "engine/project/by_cloth.hpp"

namespace gristwright::cli {
namespace {

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

// The two strongest reasons. Of what is lacking only those that take from it are reasons; where
// there are none, what speaks for it did not suffice.
std::string why_so(const Trait& trait, bool lacking) {
    const bool in_spite = lacking && trait.lowering.empty();
    const auto& reasons = lacking && !in_spite ? trait.lowering : trait.reasons;
    std::string out;
    for (std::size_t r = 0; r < std::min<std::size_t>(2, reasons.size()); ++r)
        out += (r > 0 ? ", " : in_spite ? "; in its favour: " : ": ") + reasons[r];
    return out;
}

// What the table of needs names for such an article: a collar helps a shawl, not a leg warmer.
std::optional<std::string> remedy_of_needs(TraitName trait, const Plan& plan) {
    if (!plan.article->calling) return {};
    for (const auto& demand : plan.article->calling->demands)
        if (demand->trait == trait && demand->enough > demand->lacking && !demand->remedy.empty())
            return demand->remedy;
    return {};
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
    return out + why_so(yarn.trait(*trait), lacks(name, judged));
}

std::string remedy(FactorName name, const Judgement& judged, const Plan& plan) {
    if (!lacks(name, judged)) return "";
    switch (name) {
        case FactorName::definition:
            return "more twist, a third ply or combed fibre; or a plainer stitch";
        case FactorName::drape:
            return plan.article->craft == Craft::knitted ? "a larger needle" : "a wider sett";
        case FactorName::softness:
            return remedy_of_needs(TraitName::softness, plan).value_or("finer fibre");
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
            if (plan.article->craft == Craft::knitted) return "another needle, after a swatch";
            if (plan.article->loom == Loom::pins) return "a frame with its pins closer or wider";
            return fmt::format("another {}", spaced_in(*plan.pieces.front().woven));
        case FactorName::fineness:
            return judged.factor(name).had < plan.article->finest
                       ? "hold it double, or choose what is made in finer yarn"
                       : "choose what is made in thicker yarn";
        case FactorName::equipment:
            return "borrow what is missing, or choose another plan";
    }
    return "";
}

std::vector<std::string> said_against(const Judgement& judged, const Plan& plan,
                                      const YarnProfile& yarn) {
    std::vector<std::string> out;
    for (const auto& objection : against(judged, plan, yarn))
        out.push_back(objection.need ? objection.need->reason
                      : objection.wish
                          ? short_against(*objection.wish, judged.factor(*objection.wish), plan)
                          : "the skeins are several yarns");
    return out;
}

std::vector<std::string> said_in_favour(const Judgement& judged, const YarnProfile& yarn) {
    std::vector<std::string> out;
    for (const auto name : in_favour(judged, yarn)) out.emplace_back(short_for(name));
    return out;
}

}  // namespace gristwright::cli
