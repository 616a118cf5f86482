// The person's own templates, beside the built-in ones. One bad file never stops the rest.
#pragma once

#include <filesystem>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// A person's own template takes no other's name: throws Refused.
void check_new_template(const Catalogue& catalogue, const Template& own);

// Adds every template of that folder that can be read; the others are in `catalogue.left_out`, each
// with the reason. Files that begin with a dot are no templates: editors keep their own there. A
// folder that is not there is as good as an empty one.
void add_own_templates(Catalogue& catalogue, const std::filesystem::path& folder);

}  // namespace gristwright::catalog
