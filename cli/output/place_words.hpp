// A place in the work in words.
#pragma once

#include <string>
#include <vector>

#include "cli/output/units.hpp"
#include "engine/evidence/skein_ends.hpp"

namespace gristwright::cli {

// What is done there: "row 120 of the body", "row 34 of hand 2", "40 cm of the panel", "the warp".
std::string place_words(const Plan& plan, const YarnPlace& place, const Units& units);

// "the body", "hand 2".
std::string piece_words(const Plan& plan, const YarnPlace& place);

// Of this batch in this plan.
std::vector<SkeinEnd> skein_ends(const Plan& plan, const YarnProfile& yarn, double factor = 1,
                                 Length used = {});

// "Two skeins by turns, two rows of each; when one ends the next takes its place."; empty where
// they are taken one after another, or one is enough.
std::string turns_in_words(const Plan& plan, const YarnProfile& yarn);

// "A ends in row 120 of the body; B ends in ... Change skeins at a side edge."; `names` of the
// skeins. Empty: no skein ends.
std::string ends_in_words(const Plan& plan, const std::vector<SkeinEnd>& ends,
                          const std::vector<std::string>& names, const Units& units);

// Worked in rounds, not to and fro.
bool goes_round(const PlanPiece& piece);

}  // namespace gristwright::cli
