// Reading an idea without a model of language: longest phrases of a table first, then who belongs
// to whom. docs/suggestions.md tells how it reads; tests/cases/read_suggestions.csv what.
#pragma once

#include <string>

#include "engine/suggestion/lexicon.hpp"
#include "engine/suggestion/taken.hpp"

namespace gristwright {

Taken understand(const std::string& idea, const Lexicon& lexicon, Stemmer& stemmer);

}  // namespace gristwright
