#include <span>

#include "catalog/reference/image.hpp"

// The bytes stand in built_in.S.
extern "C" const unsigned char gristwright_catalogue_begin[];
extern "C" const unsigned char gristwright_catalogue_end[];

namespace gristwright::catalog {

Catalogue built_in() {
    return read_image(std::span(gristwright_catalogue_begin, gristwright_catalogue_end));
}

}  // namespace gristwright::catalog
