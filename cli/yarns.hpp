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

// "yarn 1: skein 3; 173 tex (...)", a line for each, with its gauge and sett.
std::string several_yarns(const Question& q);

}  // namespace gristwright::cli
