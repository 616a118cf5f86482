// A person's own hands: what the swatches of other batches tell about the next one. How much
// tighter or looser than the table they knit, and how clearly stitches read in yarns made up alike.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/yarn/evidence.hpp"
#include "engine/yarn/make_up.hpp"

namespace gristwright {

// What one batch tells about the hands that spun and knitted it.
struct HandsSeen {
    std::string batch;
    std::optional<Estimate<double>> gauge;  // washed swatches / the table, for that yarn
    std::optional<double> look;             // rated on its swatches minus the table's definition
    MakeUp made;
};

// From ratios of swatch gauge to table gauge, one for each batch: shrunk towards 1, the more the
// fewer there are. Normal means with a common normal prior, both variances known: Gelman et al.,
// Bayesian Data Analysis, 3rd edition, section 2.5 - from memory; in the tests against the closed
// form and a grid. No ratios: 1 with the margin between people.
Estimate<double> gauge_habit(const std::vector<Estimate<double>>& ratios);

// Puts what other batches tell into the evidence of a batch of this make-up: the habit, the looks
// of yarns made up alike, and on what they stand. Nothing seen changes nothing.
void learn_from(const std::vector<HandsSeen>& others, const MakeUp& made, Evidence& known);

}  // namespace gristwright
