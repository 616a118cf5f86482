// A split drawn: each skein as a bar with a mark at every cut, and what each part is for.
#pragma once

#include "cli/output/svg.hpp"
#include "cli/split_asked.hpp"

namespace gristwright::cli {

// At most 24 skeins are drawn, the others counted. The split must be one that was found.
Svg split_chart(const allocation::Split& split, const SplitAsked& asked, const Question& q);

// The same with a heading, for a file of its own.
Svg split_picture(const allocation::Split& split, const SplitAsked& asked, const Question& q);

}  // namespace gristwright::cli
