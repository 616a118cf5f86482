// Ages as garments are sized by them and people tell them: "6-12 months", "2T", "4 yrs".
#pragma once

#include <string>

namespace gristwright::catalog {

// "18 month old" for "12-18 mo" (the upper end, as clothes are grown into), "2 year old" for
// "toddler 2T", "newborn" as it stands; empty where the text is no age. A bare "m" is months only
// where no length can stand: `no_length`.
std::string as_age(const std::string& text, bool no_length);

}  // namespace gristwright::catalog
