// A template from its TOML text (format: docs/templates.md).
#pragma once

#include <string>
#include <string_view>

#include "engine/project/template.hpp"

namespace gristwright::catalog {

// `name` is the template's, `file` stands in complaints. Checks every key, word and range, that the
// fabrics exist and that the words in braces can be filled in. Throws BadText.
Template read_template(std::string_view text, const std::string& name, const std::string& file,
                       const Fabrics& fabrics);

}  // namespace gristwright::catalog
