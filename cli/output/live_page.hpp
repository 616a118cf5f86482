// The whole tool in one page, as cli/web/build made it, with a batch inside.
#pragma once

#include <string>

#include "catalog/typed/batch_text.hpp"

namespace gristwright::cli {

// Beside the program: in ../share/gristwright once installed, in build/web else.
// Throws catalog::StorageFailed that says how to make it where there is none.
std::string live_page(const catalog::BatchText& batch);

}  // namespace gristwright::cli
