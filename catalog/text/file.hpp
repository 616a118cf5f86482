// A whole file as text.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "catalog/text/storage_failed.hpp"

namespace gristwright::catalog {

struct MissingFile : StorageFailed {
    using StorageFailed::StorageFailed;
};

// "there is no file 'heron.toml'": what to say of a file that cannot be opened.
std::string why_not_opened(const std::filesystem::path& path);

// "skeins.CSV": named as a sheet in text is, whether or not it is there.
bool is_named_as_a_sheet(std::string_view path);

// Throws MissingFile when it cannot be opened or read.
std::string read_file(const std::filesystem::path& path);

}  // namespace gristwright::catalog
