// gristwright swatch: what a swatch of a remembered batch told.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command swatch_command();

}  // namespace gristwright::cli
