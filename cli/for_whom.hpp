// Whose size it is: --for.
#pragma once

#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

inline constexpr Option for_option{"for", "child 6",
                                   "whose size: newborn, 6 months, child 6, woman M, man"};

// The size of the body named is the size asked for. What is said of it; empty: --for was not
// given. Throws Refused for nobody, or where the article fits no body.
std::string size_for(const Arguments& arguments, const Template& article, Question& q);

// Leaves in the catalogue what fits that person: what a body measures, at their size; for a child
// nothing else that is worn, for a baby only what is made for one. Says whose size it is; empty:
// --for was not given.
std::string articles_for(const Arguments& arguments, Question& q);

}  // namespace gristwright::cli
