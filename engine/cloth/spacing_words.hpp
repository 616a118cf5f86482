// How the ends of a cloth are spaced, in a weaver's words.
#pragma once

#include <string>
#include <string_view>

#include "engine/cloth/weaving.hpp"

namespace gristwright {

std::string_view spaced_in(const WovenCloth& cloth);  // "heddle", "reed", "frame"

// "50/10 cm heddle", "10 epi reed (two ends to a dent)", "two 10 epi heddles (one behind the
// other)", "frame with pins at 8 epi".
std::string spacing_words(const WovenCloth& cloth);

}  // namespace gristwright
