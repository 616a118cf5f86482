// gristwright start: begins a project with a remembered batch, so that its ball can be weighed.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command start_command();

}  // namespace gristwright::cli
