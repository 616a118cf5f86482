// Where a yarn stands among ordinary handspun yarns for one article: the share of them that serve
// it less well. An article that any yarn can serve tells nothing about a yarn.
#pragma once

#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

// How well each of these yarns serves the article, as levels 0..1 in rising order at even steps of
// the share of yarns: the first is the poorest, the last the best.
std::vector<double> standing_levels(const Template& article, const std::vector<YarnProfile>& yarns,
                                    const Fabrics& fabrics);

// Share (0..1) of the yarns behind the levels that serve less well than `served` (0..1). At least
// two levels.
double share_beaten(const std::vector<double>& levels, double served);

}  // namespace gristwright
