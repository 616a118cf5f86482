// What a page or a list says first: the yarn in a few words, an article's size with its width, and
// the best that the batch makes.
#pragma once

#include <string>
#include <vector>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// "three-ply Corriedale, carded and drawn short"; "three-ply yarn" where the fibre is not given.
std::string yarn_in_words(const Batch& batch);

// "150 x 22 cm", "62 cm round, 25 cm high", "round the head 56 cm", "11 x 11 cm each".
std::string size_in_words(const Plan& plan, const Units& units);

// "a stranded hat, round the head 56 cm (enough for three)"
std::string made_in_words(const Plan& plan, const Units& units);

// "Plain socks (knitted): serves poorly, suitability 47 of 100"
std::string judged_in_words(const JudgedPlan& judged);

// "535 m of three-ply wool, carded and drawn short: leg warmers, ..., or a stranded hat, ...".
std::string answer_in_words(const Question& q, const std::vector<const JudgedPlan*>& best);

}  // namespace gristwright::cli
