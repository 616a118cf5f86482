// The person's own templates, beside the built-in ones. One bad file never stops the rest.
#pragma once

#include <filesystem>
#include <functional>

#include "catalog/reference/catalogue.hpp"
#include "catalog/reference/source.hpp"

namespace gristwright::catalog {

// A person's own template takes no other's name: throws Refused.
void check_new_template(const Catalogue& catalogue, const Template& own);
// One among the others takes no other's title either, in whatever letters: no answer could tell the
// two apart. Throws Refused.
void check_among_others(const Catalogue& catalogue, const Template& own);

// How a template is read from its file: read_template_file.
using TemplateReader = std::function<Template(const std::filesystem::path&, const Fabrics&)>;

// Adds every template of that folder that can be read; the others are in `catalogue.left_out`, each
// with the reason. Files that begin with a dot are no templates: editors keep their own there. A
// folder that is not there is as good as an empty one. What `read` throws that is neither a Refused
// nor a failure of storage is our mistake, not the template's, and passes on.
void add_own_templates(Catalogue& catalogue, const std::filesystem::path& folder,
                       const TemplateReader& read = read_template_file);

}  // namespace gristwright::catalog
