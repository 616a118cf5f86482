// A batch whose skeins are several yarns: which of them an answer is about.
#pragma once

#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

inline constexpr Option yarn_option{"yarn", "2",
                                    "where the skeins are several yarns, which one: its number, or "
                                    "all together; else the one with most metres"};

// Leaves in `q` the skeins of the yarn asked for, its profile not yet made anew, and says in words
// which it is. Empty: the skeins are one yarn, or all were asked for.
// Throws Refused for a yarn that is not there.
std::string take_one_yarn(const std::string& asked, const Agreement& found, Question& q);

// What is asked, of each of the yarns by itself, in their order; empty: the skeins are one yarn.
std::vector<Question> of_each_yarn(const Arguments& arguments, const std::string& batch,
                                   const Question& q);

// "skein 3: 300 m, 52 g; 173 tex, lace by its grist": the one in that place.
std::string yarn_of_several(const Question& q, std::size_t yarn);

}  // namespace gristwright::cli
