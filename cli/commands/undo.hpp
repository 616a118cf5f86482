// gristwright undo: takes back the last change to the notebook.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command undo_command();

}  // namespace gristwright::cli
