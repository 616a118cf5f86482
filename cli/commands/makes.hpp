// gristwright makes: what a batch can make, ranked.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command makes_command();

}  // namespace gristwright::cli
