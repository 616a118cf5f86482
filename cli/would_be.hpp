// A batch as it would be, had it been made another way out of the same fibre.
#pragma once

#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

inline constexpr Option would_be_option{
    "would-be", "combed",
    "beside it this batch as it would be: combed, carded, double (two strands held together), "
    "plied (plied again), or its singles in another ply: 1-ply to 8-ply"};

// Prepared and drawn otherwise, at the same grist, as thick as such a yarn usually is.
Batch prepared_otherwise(const Question& q, Preparation preparation, Draw draw);

// What was counted on the yarn as it is, its swatches too, is not carried over. Throws Refused for
// another way than those, or where the plies are not known.
Question as_would_be(const std::string& how, const Question& q);

}  // namespace gristwright::cli
