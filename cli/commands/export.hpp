// gristwright export: what the notebook holds, as JSON or a spreadsheet; what can be rescued of it.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command export_command();

}  // namespace gristwright::cli
