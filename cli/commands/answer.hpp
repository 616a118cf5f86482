// gristwright answer: people's suggestions answered with numbers, one or hundreds.
#pragma once

#include "cli/command.hpp"

namespace gristwright::cli {

Command answer_command();

}  // namespace gristwright::cli
