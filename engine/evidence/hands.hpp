// A person's own hands: how much tighter or looser than the table their swatches come out.
#pragma once

#include <vector>

#include "engine/estimate/estimate.hpp"

namespace gristwright {

// From the ratios of swatch gauge to table gauge over a person's batches: shrunk towards 1, the
// more the fewer there are (normal means with a common prior; the shrinkage of James and Stein 1961
// - from memory). No ratios: 1 with the margin between people.
Estimate<double> gauge_habit(const std::vector<double>& ratios);

}  // namespace gristwright
