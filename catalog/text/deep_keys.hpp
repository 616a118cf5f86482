// Keys of a TOML text that would lead too deep.
#pragma once

#include <string>
#include <string_view>

namespace gristwright::catalog {

// Throws BadText for a key of more than nine parts. None of our files needs more than two, and the
// parser calls itself for each part: 40,000 of them ended the program.
void refuse_deep_keys(std::string_view text, const std::string& file);

}  // namespace gristwright::catalog
