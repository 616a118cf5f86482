// gristwright hands: what your own swatches over the batches tell about you; or forgets it.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command hands_command();

}  // namespace gristwright::cli
