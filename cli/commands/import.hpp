// gristwright import: takes in what export wrote.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command import_command();

}  // namespace gristwright::cli
