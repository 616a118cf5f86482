// gristwright picture: a plan, a yarn or a cloth as an SVG file.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command picture_command();

}  // namespace gristwright::cli
