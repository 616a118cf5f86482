// Opens a file in the person's browser, where there is one.
#pragma once

#include <string>

namespace gristwright::cli {

// Empty, or a sentence that says why nothing was opened. No shell is used, and nothing is waited
// for.
std::string open_in_browser(const std::string& path);

}  // namespace gristwright::cli
