// How a split was found: its bounds, its pieces, the worth of a metre more, the constants.
#pragma once

#include <string>

#include "cli/split_asked.hpp"

namespace gristwright::cli {

std::string split_working(const allocation::Split& split, const SplitAsked& asked);

}  // namespace gristwright::cli
