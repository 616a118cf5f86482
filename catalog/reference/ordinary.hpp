// Ordinary handspun yarns as profiles, and templates made ready to be judged against them.
#pragma once

#include <vector>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// Throws std::runtime_error for a fibre that the catalogue does not hold.
std::vector<YarnProfile> ordinary_yarns(const Catalogue& catalogue);

// Gives a template what the catalogue asks of such an article and how ordinary yarns serve it.
void make_ready(Template& article, const Catalogue& catalogue,
                const std::vector<YarnProfile>& ordinary);

}  // namespace gristwright::catalog
