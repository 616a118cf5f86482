// How a count of stitches becomes another, in a knitter's words.
#pragma once

#include <string>

#include "engine/project/shaping.hpp"

namespace gristwright::cli {

// "in every 2nd round 12 times, then in every 3rd round 10 times"; of counts that come one by one
// "to 236 in round 12, 190 in round 24 and 154 in round 36".
std::string shaping_words(const Shaping& shaping);

// "increase evenly to 160 stitches", or decrease, or go on over as many.
std::string change_words(int from, int to);

// "round" of what is knitted round, else "row".
const char* row_word(const PlanPiece& piece);

// "84 stitches"; of a piece that grows or narrows "353 stitches at the widest".
std::string stitches_words(const PlanPiece& piece);

// "60 rows"; of a piece whose rows are another's, which: "26 rows, among those of the foot".
std::string rows_words(const PlanPiece& piece);

// "6th", "2nd".
std::string nth(int n);

}  // namespace gristwright::cli
