// What of a damaged notebook can still be read, for a new one.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace gristwright::catalog {

struct Rescued {
    std::string json;  // as Notebook::export_json writes it
    std::size_t batches = 0, skeins = 0, swatches = 0, weighings = 0, suggestions = 0;
    // Tables of which some rows could not be read; none when the notebook is sound.
    std::vector<std::string> damaged;
    // Names given to batches whose own was lost: "rescued-7".
    std::vector<std::string> renamed;
};

// The file stays as it is. Row by row, from both ends of each table towards what is damaged; bytes
// that are no text become '?'. Throws NotebookRefused for a file that is not there, is no notebook
// or a newer one, or is so damaged that SQLite finds no table in it.
Rescued rescue(const std::filesystem::path& path);

}  // namespace gristwright::catalog
