#include "engine/suitability/judgement.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/by_cloth.hpp"
#include "engine/project/constants.hpp"
#include "engine/project/desirability.hpp"
#include "engine/project/served.hpp"
#include "engine/suitability/constants.hpp"
#include "engine/suitability/standing.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

using namespace constants;

constexpr std::array<std::string_view, factor_count> factor_words{
    "definition",   "drape",       "softness", "wear",     "warmth",   "elasticity",
    "warp fitness", "consistency", "cover",    "fineness", "equipment"};

// Openness of a cloth, 0 as firm as board, 1 as loose as holds together.
double looseness_of(const PlanPiece& piece) {
    return by_cloth(
        piece,
        [](const KnitCloth& k) {
            return std::clamp((firmest_knit - k.tightness) / (firmest_knit - loosest_knit), 0.0,
                              1.0);
        },
        [](const WovenCloth& w) { return looseness(w); });
}

double fabric_definition(const PlanPiece& piece) {
    return by_cloth(
        piece, [](const KnitCloth& k) { return k.fabric->definition; },
        [](const WovenCloth& w) { return w.weave->definition; });
}

Factor& at(Judgement& j, FactorName name) { return j.factors[static_cast<std::size_t>(name)]; }

Factor wished(const Wish& wish, double had) {
    return {had, wish.at_least, wish.weight, wish_served(wish, had)};
}

// What the yarn is asked for whatever cloth is made of it.
void judge_yarn(const Template& article, Role role, const YarnProfile& yarn, Judgement& out) {
    const auto judged = [&](FactorName name, Asked what, TraitName trait) {
        at(out, name) = wished(article.wish(what), yarn.trait(trait).sure());
    };
    judged(FactorName::softness, Asked::softness, TraitName::softness);
    judged(FactorName::wear, Asked::wear, TraitName::wear);
    judged(FactorName::warmth, Asked::warmth, TraitName::warmth);
    judged(FactorName::elasticity, Asked::elasticity, TraitName::elasticity);
    if (article.craft == Craft::woven)
        judged(FactorName::warp_fitness, Asked::warp_fitness, TraitName::warp_fitness);
    if (role == Role::weft) at(out, FactorName::warp_fitness).weight = 0;
    at(out, FactorName::consistency) = wished(article.wish(Asked::consistency), yarn.consistency);
}

Factor knitted_cover(const KnitCloth& k) {
    return {k.tightness, k.wanted.middle(), cover_weight,
            std::max<double>(least_wish, desire_within(k.tightness, k.wanted.low, k.wanted.high,
                                                       tightness_tail))};
}

Factor woven_cover(const WovenCloth& w) {
    return {w.share, (w.wanted.low + w.wanted.high) / 2, cover_weight, share_served(w)};
}

// What is asked of it in the cloth that is planned.
void judge_cloth(const Plan& plan, const YarnProfile& yarn, Judgement& out) {
    const auto& article = *plan.article;
    auto definition = article.wish(Asked::definition);
    for (const auto& piece : plan.pieces)
        definition.at_least = std::max(definition.at_least, fabric_definition(piece));
    at(out, FactorName::definition) = wished(definition, yarn.trait(TraitName::definition).sure());
    const auto& first = plan.pieces.front();
    at(out, FactorName::drape) =
        wished(article.wish(Asked::drape), drape_had(looseness_of(first), yarn));
    at(out, FactorName::cover) = by_cloth(first, knitted_cover, woven_cover);
}

// The same where the cloth could not be better.
void hope_for_cloth(const Template& article, const YarnProfile& yarn, Judgement& out) {
    const auto& definition = article.wish(Asked::definition);
    at(out, FactorName::definition) = wished(definition, yarn.trait(TraitName::definition).sure());
    at(out, FactorName::drape).weight = article.wish(Asked::drape).weight;
    at(out, FactorName::cover).weight = cover_weight;
}

// How many weight classes the yarn lies outside those the article is usually made in, counting the
// class by grist and the class by wraps, whichever is nearer.
Factor fineness(const Template& article, const YarnProfile& yarn) {
    Factor out{0, double(article.finest), fineness_weight, 0};
    double nearest = INFINITY;
    for (const auto* classes : {&yarn.class_by_grist, &yarn.class_by_wraps})
        for (const auto& c : *classes) {
            const double finer = article.finest - c.number, thicker = c.number - article.thickest;
            const double away = std::max({0.0, finer, thicker});
            if (away >= nearest) continue;
            nearest = away;
            out.had = c.number;
            out.wanted = thicker > 0 ? article.thickest : article.finest;
        }
    if (nearest == INFINITY)
        throw OurMistake(
            "the yarn has no weight class: profile() needs the tables of the catalogue");
    // Cobweb is as far from laceweight as that is from super fine.
    const auto cobweb = grams(1) / metres(cobweb_from);
    if (nearest > 0 && out.had < article.finest && yarn.linear_density.mid < cobweb) nearest += 1;
    out.desirability = std::max<double>(least_fineness, desire_more(0, nearest, classes_away));
    return out;
}

Factor equipment(const Plan& plan) {
    Factor out{1, 1, equipment_weight, 1};
    for (const auto obstacle : plan.obstacles)
        out.had = std::min<double>(out.had, stops(obstacle) ? 0.0 : double{borrowed});
    out.desirability = out.had;
    return out;
}

// Product of d^(w / sum w), the equipment left out: it is no fault of the yarn.
void serve_wishes(Judgement& out) {
    double weights = 0, logs = 0;
    for (auto& f : out.factors) {
        if (&f == &at(out, FactorName::equipment)) continue;
        weights += f.weight;
        if (f.weight > 0) logs += f.weight * std::log(f.desirability);
    }
    if (weights <= 0) return;
    out.served = std::exp(logs / weights);
    for (auto& f : out.factors)
        f.cost = f.weight > 0 && f.desirability < 1
                     ? std::expm1(-f.weight / weights * std::log(f.desirability))
                     : 0;
}

double had_of(const Demand& demand, const YarnProfile& yarn) {
    if (demand.trait) {
        const auto& trait = yarn.trait(*demand.trait);
        return demand.enough > demand.lacking ? trait.sure() : trait.value;
    }
    return yarn.plies > 0 ? yarn.plies : (demand.enough + demand.lacking) / 2;
}

// A trait that lacks lacks once, however many rows ask for it: the one that leaves least.
void add_worst_of_trait(Needed need, std::vector<Needed>& unmet) {
    const auto same = std::find_if(unmet.begin(), unmet.end(), [&](const Needed& other) {
        return other.demand->trait == need.demand->trait;
    });
    if (same == unmet.end())
        unmet.push_back(std::move(need));
    else if (need.kept < same->kept)
        *same = std::move(need);
}

void serve_needs(const Template& article, const YarnProfile& yarn, Judgement& out) {
    if (!article.calling) return;
    const bool in_warp = at(out, FactorName::warp_fitness).weight > 0;  // else it is weft only
    for (const auto& demand : article.calling->demands) {
        const double had = had_of(*demand, yarn), met = demand->met(had);
        if (met >= 1 || (demand->trait == TraitName::warp_fitness && !in_warp)) continue;
        Needed need{demand, had, met};
        need.kept = demand->left + (1 - demand->left) * need.met;
        need.cost = 1 / need.kept - 1;
        add_worst_of_trait(std::move(need), out.unmet);
    }
    for (const auto& need : out.unmet) out.served *= need.kept;
    std::stable_sort(out.unmet.begin(), out.unmet.end(),
                     [](const Needed& a, const Needed& b) { return a.kept < b.kept; });
}

// Points that making one loss good would bring, standing as it is.
void price(double points, Judgement& out) {
    for (auto& f : out.factors) f.cost *= points;
    for (auto& need : out.unmet) need.cost *= points;
}

// Neither what it is spun from nor how it was plied: nothing but metres and grams.
bool is_known(const YarnProfile& yarn) {
    return yarn.plies > 0 || yarn.fibre_diameter || !yarn.felting.empty();
}

void combine(const Template& article, const YarnProfile& yarn, Judgement& out) {
    const auto& calling = article.calling;
    auto& equipment = at(out, FactorName::equipment);
    double own = 1, points = 100 * out.served;
    if (calling && calling->levels.size() > 1) {
        out.compared = true;
        out.better_than = share_beaten(calling->levels, out.served);
        own = 1 - standing_weight;
        points = 100 * (own * out.served + standing_weight * out.better_than);
    }
    const double known = is_known(yarn) ? 1.0 : double{not_known_leaves};
    points *= known;
    out.score = points * equipment.desirability;
    price(100 * known * own * out.served * equipment.desirability, out);
    equipment.cost = points - out.score;
}

// `out` holds what its cloth and the equipment are judged to be.
Judgement judge_all(const Template& article, Role role, const YarnProfile& yarn, Judgement out) {
    judge_yarn(article, role, yarn, out);
    at(out, FactorName::fineness) = fineness(article, yarn);
    serve_wishes(out);
    serve_needs(article, yarn, out);
    combine(article, yarn, out);
    return out;
}

}  // namespace

std::string_view words(FactorName name) { return factor_words[static_cast<std::size_t>(name)]; }

Serves serves(double score) {
    if (score >= serves_well_from) return Serves::well;
    if (score >= serves_from) return Serves::fairly;
    if (score >= serves_poorly_from) return Serves::poorly;
    return Serves::not_at_all;
}

std::string_view words(Serves s) {
    switch (s) {
        case Serves::well:
            return "serves well";
        case Serves::fairly:
            return "serves";
        case Serves::poorly:
            return "serves poorly";
        case Serves::not_at_all:
            return "does not serve";
    }
    return "";
}

Judgement judge(const Plan& plan, const YarnProfile& yarn) {
    Judgement out;
    judge_cloth(plan, yarn, out);
    at(out, FactorName::equipment) = equipment(plan);
    return judge_all(*plan.article, plan.article->role, yarn, std::move(out));
}

double best_score(const Template& article, Role role, const YarnProfile& yarn) {
    Judgement hoped;
    hope_for_cloth(article, yarn, hoped);
    return judge_all(article, role, yarn, std::move(hoped)).score;
}

}  // namespace gristwright
