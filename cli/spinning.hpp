// What the commands about spinning share: the fibre lost on the way, and grist as spinners say it.
#pragma once

#include "cli/question.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright::cli {

inline constexpr Option losses_option{"losses", "10%",
                                      "fibre lost in carding, drafting, plying, sampling"};
// The share that --losses says, else the usual one.
double losses(const Arguments& arguments);

double metres_per_gram(LinearDensity grist);
double yards_per_pound(LinearDensity grist);

}  // namespace gristwright::cli
