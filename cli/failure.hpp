// Where a failure becomes an exit code.
#pragma once

#include <exception>

#include "cli/exit_codes.hpp"

namespace gristwright::cli {

// The code of the family that `error` is of. Only a Refused is the person's mistake, and only
// storage can fail: whatever else comes, the standard library's std::invalid_argument too, is ours.
ExitCode exit_code_of(const std::exception& error);

}  // namespace gristwright::cli
