// Several skeins that are alike, in one text: "3 x 110 yd @ 57 g".
#pragma once

#include <string>

namespace gristwright::catalog {

struct Several {
    int count = 1;
    std::string one;   // the text of one of them, without what counts them
    std::string name;  // "skein 3" of "Skein 3: 166m/71g"
};

// "two" is no figure here. Throws Unclear where it is not said whether the length and the mass are
// those of each skein or of all, and for "100 g and a bit".
Several several_skeins(const std::string& text);

}  // namespace gristwright::catalog
