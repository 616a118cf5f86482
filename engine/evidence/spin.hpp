// Spinning on: fibre that closes a shortfall, and what yarn to aim for next time.
#pragma once

#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

// Fibre for so much yarn when a share of the fibre is lost on the way: divided out, never added
// (half lost needs twice the fibre). Throws Refused unless 0 <= losses < 1.
Mass fibre_for(Length yarn, LinearDensity grist, double losses);

struct [[nodiscard]] SpinMore {
    Length metres;            // to add to the batch
    Mass fibre;               // losses included
    double grist_margin = 0;  // how far the new skein's grist may lie from the old to pass as one
    LinearDensity finest, thickest;  // so far from the old
};
SpinMore spin_more(const Plan& short_plan, LinearDensity grist, double losses);

// A yarn to aim for.
struct SpinTarget {
    std::string weight;  // class
    LinearDensity grist, grist_low, grist_high;
    Wraps wraps;
    Estimate<Length> metres;
    Mass fibre;
};

// One for each weight class the article is usually made in, the finest first, for hands of this
// habit.
std::vector<SpinTarget> spin_for(const Template& article, Length size,
                                 const std::vector<WeightClass>& classes, const Fabrics& fabrics,
                                 double losses, const std::optional<Estimate<double>>& habit = {});

}  // namespace gristwright
