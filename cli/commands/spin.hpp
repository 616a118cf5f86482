// gristwright spin: fibre that closes a shortfall, or a yarn to aim for.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command spin_more_command();
Command spin_for_command();

}  // namespace gristwright::cli
