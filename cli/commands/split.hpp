// gristwright split: samples and projects out of the same skeins, and what to wind off.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command split_command();

}  // namespace gristwright::cli
