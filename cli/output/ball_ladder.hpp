// The ladder of a ball: what the scale shows, and what is left at that.
#pragma once

#include <string>
#include <vector>

#include "cli/output/units.hpp"
#include "engine/evidence/yarn_places.hpp"

namespace gristwright::cli {

// Round masses that a scale shows, from below `whole` down, at most `most` of them.
std::vector<Mass> rungs(Mass whole, const Units& units, std::size_t most);
std::string rung_words(Mass rung, const Units& units);  // "25 g", "0.9 oz"

// The work that the ball goes into: of what is woven the weft, its warp being wound already.
std::vector<Stretch> ball_work(const Plan& plan);

struct Rung {
    Mass ball;
    Length left;
    YarnPlace place;  // with that much left the work must have come at least so far
};

// What is set aside for a plan, for the certainty asked, but not more than there is.
Length set_aside_for(const Plan& plan);

// For all of the yarn that is set aside for that work, the surest share of it kept back: with less
// than a rung on the scale before its place the yarn will not reach with the certainty asked.
std::vector<Rung> ladder_of(const Plan& plan, LinearDensity grist, const Units& units,
                            std::size_t most);

}  // namespace gristwright::cli
