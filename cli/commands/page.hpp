// gristwright page: a batch as one HTML file.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command page_command();

}  // namespace gristwright::cli
