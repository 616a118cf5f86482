// gristwright spin-for: how to spin a yarn for an article.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command spin_for_command();

}  // namespace gristwright::cli
