// The catalogue as one image: written by the build, carried in the program, read at its start.
#pragma once

#include <span>
#include <string>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// The same bytes for the same catalogue, whatever machine and compiler.
std::string image_of(const Catalogue& catalogue);

// Throws std::runtime_error for another layout or a damaged image.
Catalogue read_image(std::span<const unsigned char> image);

}  // namespace gristwright::catalog
