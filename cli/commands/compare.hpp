// gristwright compare: the same article knitted and woven, side by side.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command compare_command();

}  // namespace gristwright::cli
