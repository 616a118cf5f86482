// gristwright the notebook: undo, backup, export and import of the notebook.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command undo_command();
Command backup_command();
Command export_command();
Command import_command();

}  // namespace gristwright::cli
