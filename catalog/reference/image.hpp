// The catalogue as one SQLite image: written by the build, read by the program.
#pragma once

#include <span>
#include <string>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// The layout of the image; a program reads only its own.
inline constexpr int image_version = 2;

// Writes a new file; throws std::runtime_error when it cannot.
void write_image(const Catalogue& catalogue, const std::string& path);

// Throws std::runtime_error for another version or a damaged image.
Catalogue read_image(std::span<const unsigned char> image);

}  // namespace gristwright::catalog
