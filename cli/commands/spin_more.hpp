// gristwright spin-more: fibre that closes a shortfall.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command spin_more_command();

}  // namespace gristwright::cli
