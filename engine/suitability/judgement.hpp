// How well a yarn serves a plan: one desirability a factor, combined as a weighted geometric mean,
// so that one factor at zero sinks it (Derringer and Suich 1980, J. Quality Technology 12:214-219).
#pragma once

#include <array>
#include <string>
#include <string_view>

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

struct [[nodiscard]] Judgement {
    double score = 0;  // 0..100: suitability
    std::array<Factor, factor_count> factors;

    const Factor& factor(FactorName name) const { return factors[static_cast<std::size_t>(name)]; }
};

enum class Serves { well, fairly, poorly, not_at_all };
Serves serves(double score);
std::string_view words(Serves serves);  // serves well, serves, serves poorly, does not serve

Judgement judge(const Plan& plan, const YarnProfile& yarn);

}  // namespace gristwright
