// A yarn told against an article: what reasons and their words are tried on.
#pragma once

#include "engine/suitability/judgement.hpp"
#include "tests/engine/invented.hpp"

namespace invented {

// A scarf that wishes for softness and warmth, of a yarn whose traits a test sets.
struct Told {
    Template article = knitted_scarf();
    YarnProfile yarn = invented::yarn(900, 200);
    Plan plan;
    Judgement judged;

    Told(double softness, double warmth, const Equipment& owned = {}) {
        wish(Asked::softness) = {0.7, 0.8};
        wish(Asked::warmth) = {0.7, 0.4};
        of(TraitName::softness) = {softness,
                                   0.1,
                                   {"thick fibre", "much twist", "a third"},
                                   0,
                                   {"thick fibre", "much twist"}};
        of(TraitName::warmth) = {warmth, 0.1, {}};
        plan = gristwright::plan(article, yarn, fabrics(), owned, {});
        plan.article = lent(article);
        judged = judge(plan, yarn);
    }
    Told(const Told&) = delete;

    Wish& wish(Asked what) { return article.wishes[static_cast<std::size_t>(what)]; }
    Trait& of(TraitName what) { return yarn.traits[static_cast<std::size_t>(what)]; }
};

}  // namespace invented
