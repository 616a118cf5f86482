// gristwright templates: the catalogue, one of it, or a check of a person's own.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command templates_command();

}  // namespace gristwright::cli
