// gristwright batch: remembered batches: add, list, show, change, remove.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command batch_command();

}  // namespace gristwright::cli
