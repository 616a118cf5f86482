// The words of a heading or a cell.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::catalog {

// "Yarn-needed (yd)" is "yarn", "needed", "yd": the letters, small, signs made plain; "W.P.I." is
// one word. A letter that is no ASCII is a letter: "Länge".
std::vector<std::string> words_of(std::string_view text);

// The same without what parts them: how headings are compared, "yarnneeded".
std::string joined_words(std::string_view text);

}  // namespace gristwright::catalog
