// The completion of bash, made from the commands' records.
#pragma once

#include <string>

namespace gristwright::cli {

std::string bash_completion();

}  // namespace gristwright::cli
