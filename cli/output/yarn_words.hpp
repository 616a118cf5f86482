// What is assumed of a yarn, and what would sharpen the answer, in words.
#pragma once

#include <string>
#include <vector>

#include "cli/output/units.hpp"
#include "engine/cloth/hint.hpp"

namespace gristwright::cli {

std::string words(const Assumption& assumption, const Units& units);
std::string words(const Hint& hint);

std::vector<std::string> assumptions(const YarnProfile& yarn, const Units& units);
// The first narrows most.
std::vector<std::string> hints(const YarnProfile& yarn);

}  // namespace gristwright::cli
