// A whole file as text.
#pragma once

#include <filesystem>
#include <string>

#include "catalog/text/storage_failed.hpp"

namespace gristwright::catalog {

struct MissingFile : StorageFailed {
    using StorageFailed::StorageFailed;
};

// "there is no file 'heron.toml'": what to say of a file that cannot be opened.
std::string why_not_opened(const std::filesystem::path& path);

// Throws MissingFile when it cannot be opened or read.
std::string read_file(const std::filesystem::path& path);

}  // namespace gristwright::catalog
