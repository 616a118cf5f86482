// The catalogue from its reviewed text: the folder with tables/ and templates/.
#pragma once

#include <filesystem>
#include <string>

#include "catalog/reference/catalogue.hpp"
#include "catalog/text/storage_failed.hpp"

namespace gristwright::catalog {

// The whole file. Throws MissingFile when it cannot be opened.
struct MissingFile : StorageFailed {
    using StorageFailed::StorageFailed;
};
std::string read_file(const std::filesystem::path& path);

// Throws BadText for the first thing wrong in any file; two templates of one name are wrong.
Catalogue read_source(const std::filesystem::path& folder);

// One template file; its name is the file's.
Template read_template_file(const std::filesystem::path& path, const Fabrics& fabrics);

}  // namespace gristwright::catalog
