// What people type in one plain spelling: small letters, single spaces, signs as keyboards have
// them.
#pragma once

#include <string>
#include <string_view>

namespace gristwright {

// "1½ OZ" is "1 1/2 oz", "10×10 cm" is "10x10 cm", "24–27 µm" is "24-27 um". A space that does not
// break is a space; a line end and what has no plain spelling stay as they are.
std::string plain(std::string_view typed);

}  // namespace gristwright
