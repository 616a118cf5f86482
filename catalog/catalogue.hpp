// What gristwright knows before a person says anything: reference tables and templates. Reviewed
// text in catalog/, checked and packed into one SQLite image by the build, carried in the program.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/project/body.hpp"
#include "engine/project/template.hpp"
#include "engine/suggestion/suggestion.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright::catalog {

struct Catalogue {
    YarnTables yarn;
    Fabrics fabrics;
    std::vector<FibrePart> fibres;
    Words words;
    std::vector<BodySize> bodies;
    std::vector<Template> templates;  // by name

    const Template* template_named(std::string_view name) const;
    // Small letters count as capitals do, and a name without its bracket is enough.
    const FibrePart* fibre_named(std::string_view name) const;
    std::vector<std::string> template_names() const;
    std::vector<std::string> fibre_names() const;
};

// The catalogue carried in this program. Throws std::runtime_error when its image is damaged.
Catalogue built_in();

}  // namespace gristwright::catalog
