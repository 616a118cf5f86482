#include "cli/commands/backup.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

Answer backup(const Arguments& arguments) {
    notebook(arguments, Notebook::Mode::read_only).backup(arguments.words[0]);
    return {fmt::format("The notebook is copied to '{}'.\n", inert(arguments.words[0])), "", 0,
            "the copy is made"};
}

}  // namespace

Command backup_command() {
    return {"backup", "Copies the whole notebook to a new file.",
            "FILE",   1,
            1,        {notebook_option},
            backup,   "notebook-copy.sqlite"};
}

}  // namespace gristwright::cli
