// gristwright yarn: what yarn a batch is.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command yarn_command();

}  // namespace gristwright::cli
