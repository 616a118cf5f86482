// docs/reference.md: every command, option and topic, made from the records.
#pragma once

#include <string>

namespace gristwright::cli {

std::string reference();

}  // namespace gristwright::cli
