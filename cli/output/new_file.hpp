// A file that is there whole or not at all: written beside its name, moved onto it when complete.
// What stands there already is not lost by a slip.
#pragma once

#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

#include "catalog/text/storage_failed.hpp"

namespace gristwright::cli {

// What could not be created or written, and why: exit 73.
struct CannotCreate : catalog::StorageFailed {
    using StorageFailed::StorageFailed;
};

// Where a text goes. A link is followed; a pipe or a character device is written to and stays what
// it is. An old file makes room only if `replace` says so, and hands its mode on.
struct NewFile {
    std::string path;
    bool replace = false;
    std::vector<std::string> spared = {};  // never written over, by whatever name they are reached
};

// Throws CannotCreate for what write_file would refuse: a folder, a disk, a spared file, a
// write-protected file, a file that may not be replaced. Nothing is touched.
void check_new_file(const NewFile& file);

// A text that is made while it is written: the next piece of it; empty: that was all.
using Pieces = std::function<std::string()>;

// Throws CannotCreate; then an old file is untouched.
void write_file(const NewFile& file, const Pieces& pieces);
void write_file(const NewFile& file, const std::string& text);

// The text would go where the answer goes: "Written" does not belong behind it.
bool is_standard_output(const NewFile& file);

}  // namespace gristwright::cli
