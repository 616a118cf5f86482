// The tables of what kinds of articles need and of what handspun is spun for, and that of the
// ordinary yarns a yarn is compared with.
#pragma once

#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// Throws BadText for a word that is not in its list or limits that do not differ.
std::vector<DemandFor> read_needs(const std::string& text, const std::string& file);

// Throws BadText as well for a place that is not above 0 and at most 1.
std::vector<SpunFor> read_spun_for(const std::string& text, const std::string& file);

// A row stands for each of its plies with each of its grists ("1|2", "2|3.5|6").
std::vector<OrdinaryYarn> read_ordinary_yarns(const std::string& text, const std::string& file);

}  // namespace gristwright::catalog
