// Manual pages in mdoc(7), made from the commands' records.
#pragma once

#include <string>

#include "cli/command.hpp"

namespace gristwright::cli {

std::string manual();                        // gristwright(1)
std::string manual(const Command& command);  // gristwright-NAME(1)

}  // namespace gristwright::cli
