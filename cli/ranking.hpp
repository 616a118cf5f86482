// The catalogue's articles ranked for the batch that a question is about.
#pragma once

#include <string_view>

#include "cli/output/describe.hpp"

namespace gristwright::cli {

// `craft`: "knitted", "woven", or empty for both.
Ranked rank(const Question& q, std::string_view craft = "");

}  // namespace gristwright::cli
