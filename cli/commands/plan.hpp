// gristwright plan: one article in full.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command plan_command();

}  // namespace gristwright::cli
