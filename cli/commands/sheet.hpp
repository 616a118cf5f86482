#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command sheet_command();

}  // namespace gristwright::cli
