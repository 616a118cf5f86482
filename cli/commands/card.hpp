// gristwright card: a printable card for each skein.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command card_command();

}  // namespace gristwright::cli
