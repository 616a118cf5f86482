// gristwright help: commands, topics, and what is made from the commands' records.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command help_command();

// Commands and topics, a line or two each.
std::string overview();

}  // namespace gristwright::cli
