// The options that name a file to write, and the file that they name.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/command.hpp"
#include "cli/output/new_file.hpp"

namespace gristwright::cli {

// --out and --replace.
std::vector<Option> out_options(std::string_view example,
                                std::string_view help = "the file to write; -o for short");

// What --out names. Spared are every file that is named elsewhere in the command, the notebook, and
// the person's own templates. Throws CannotCreate at once for what cannot be written later.
NewFile out_file(const Arguments& arguments);

// Writes it, and says so: behind the text itself only on stderr.
Answer written(const NewFile& file, const std::string& text, const std::string& said,
               std::vector<std::string> notes);
Answer written(const NewFile& file, const Pieces& pieces, const std::string& said,
               std::vector<std::string> notes);

}  // namespace gristwright::cli
