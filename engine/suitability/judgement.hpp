// How well the yarn serves a plan: desirability curves per factor, combined as a weighted geometric
// mean (Derringer and Suich 1980, J. Quality Technology 12:214-219): one factor at zero sinks it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

struct Factor {
    std::string name;   // cover, drape, definition, softness, wear, warmth, elasticity, warp
                        // fitness, consistency, equipment
    double value = 0;   // had
    double target = 0;  // wanted
    double weight = 0;  // how much it matters, 0 leaves it out
    double desirability = 1;
    double cost = 0;     // points lost from 100 because of this factor
    std::string reason;  // one short sentence
    std::string raise;   // what would raise it; empty when nothing is lost
};

struct Judgement {
    double score = 0;             // 0..100
    std::string_view verdict;     // serves well | serves | serves poorly | does not serve
    std::vector<Factor> factors;  // dearest first
};

std::string_view verdict_for(double score);
// Larger-is-better curve: 0 at `zero`, 1 at `full`, straight between.
double desire_more(double value, double zero, double full);
// Inside [low, high]: 1; falling straight to 0 at low - tail and high + tail.
double desire_within(double value, double low, double high, double tail);

Judgement judge(const Plan& plan, const YarnProfile& yarn);

}  // namespace gristwright
