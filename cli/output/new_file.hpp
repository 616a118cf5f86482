// A file that is there whole or not at all: written beside its name, moved onto it when complete.
#pragma once

#include <stdexcept>
#include <string>

namespace gristwright::cli {

// What could not be created or written, and why: exit 73.
struct CannotCreate : std::runtime_error {
    using std::runtime_error::runtime_error;
};

// Takes the place of an old file of that name. Throws CannotCreate; then the old file is untouched.
void write_file(const std::string& path, const std::string& text);

}  // namespace gristwright::cli
