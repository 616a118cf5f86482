// gristwright weigh: the ball on the scale: how far the yarn reaches.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command weigh_command();

}  // namespace gristwright::cli
