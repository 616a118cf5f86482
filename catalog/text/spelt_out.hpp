// Phrases that are alike, written as one, in whole words: "{shrink|boil} it {hard|}" is "shrink it
// hard", "boil it hard", "shrink it" and "boil it".
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

// Every phrase that is meant; the text as it is where it has no braces. Throws Refused for a brace
// without its other half or one within another.
std::vector<std::string> spelt_out(std::string_view alike);

}  // namespace gristwright::catalog
