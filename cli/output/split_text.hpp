// A split in full: what each wish gets, the skeins as bars, the cut list, what is not made and why.
#pragma once

#include <string>
#include <vector>

#include "cli/split_asked.hpp"

namespace gristwright::cli {

std::string split_text(const allocation::Split& split, const SplitAsked& asked, const Question& q,
                       const Arguments& arguments);
// The articles that it is about, samples left out.
std::vector<const Template*> articles_of(const SplitAsked& asked);

}  // namespace gristwright::cli
