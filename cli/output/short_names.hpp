// Names cut to a width so that they can still be told apart.
#pragma once

#include <string>
#include <vector>

namespace gristwright::cli {

// Each of at most `most` characters (8 or more): what all begin with is left out first, then the
// middle of what is still too long; those that would look alike get their number. Control
// characters as in `inert`.
std::vector<std::string> short_names(const std::vector<std::string>& names, std::size_t most);

}  // namespace gristwright::cli
