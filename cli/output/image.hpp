// A picture of pixels as text that a page or an SVG file can hold.
#pragma once

#include <string>

#include "engine/lay/relief.hpp"

namespace gristwright::cli {

// "data:image/jpeg;base64,...": the same text for the same pixels.
std::string data_address(const lay::Picture& picture);

}  // namespace gristwright::cli
