// How well a yarn serves a plan.
//
// Wishes: one desirability a factor, combined as a weighted geometric mean (Derringer and Suich
// 1980, J. Quality Technology 12:214-219). Needs: each unmet one takes a share that nothing gives
// back. What is served so is weighed with the yarn's standing: the share of ordinary handspun yarns
// that serve this article less well.
#pragma once

#include <array>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

enum class FactorName {
    definition,
    drape,
    softness,
    wear,
    warmth,
    elasticity,
    warp_fitness,
    consistency,
    cover,
    fineness,
    equipment,
};
inline constexpr std::size_t factor_count = 11;
std::string_view words(FactorName name);

struct Factor {
    double had = 0,
           wanted =
               0;  // wanted: the least; 0..1; of cover, the tightness or the share of greatest sett
    double weight = 0;        // 0: does not matter here
    double desirability = 1;  // 0..1
    double cost = 0;          // points of 100 lost to this factor alone
};

// One need of the article, as far as the yarn meets it.
struct Needed {
    std::shared_ptr<const Demand> demand;
    double had = 0;
    double met = 1;   // 0..1
    double kept = 1;  // share of the suitability that is left
    double cost = 0;  // points of 100 lost to it alone
};

struct [[nodiscard]] Judgement {
    double score = 0;        // 0..100: suitability
    double served = 0;       // 0..1: wishes and needs, whatever other yarns do
    double better_than = 0;  // 0..1: share of ordinary handspun yarns; meant only where known
    bool compared = false;   // whether that share is known for this article
    std::array<Factor, factor_count> factors;
    std::vector<Needed> unmet;  // not wholly met, dearest first

    const Factor& factor(FactorName name) const { return factors[static_cast<std::size_t>(name)]; }
};

enum class Serves { well, fairly, poorly, not_at_all };
Serves serves(double score);
std::string_view words(Serves serves);  // serves well, serves, serves poorly, does not serve

// Throws OurMistake for a profile that was made without the tables of weight classes.
Judgement judge(const Plan& plan, const YarnProfile& yarn);

// At most what any plan of it can score where the yarn plays this part in it: the cloth and the
// equipment as good as can be.
double best_score(const Template& article, Role role, const YarnProfile& yarn);

}  // namespace gristwright
