// The table of what kinds of articles need, and that of the ordinary yarns a yarn is compared with.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// Throws BadText for a word that is not in its list or limits that do not differ.
std::vector<DemandFor> read_needs(const std::string& text, const std::string& file);

// A row stands for each of its plies with each of its grists ("1|2", "2|3.5|6").
std::vector<OrdinaryYarn> read_ordinary_yarns(const std::string& text, const std::string& file);

}  // namespace gristwright::catalog
