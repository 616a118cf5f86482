// A printable card for each skein of a batch: cut out, tied to the skein.
#pragma once

#include <string>

#include "cli/question.hpp"

namespace gristwright::cli {

// `spun`: when, in the person's own words; may be empty.
std::string card(const Question& q, const std::string& spun);

}  // namespace gristwright::cli
