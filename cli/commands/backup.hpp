// gristwright backup: the whole notebook, copied to a new file.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command backup_command();

}  // namespace gristwright::cli
