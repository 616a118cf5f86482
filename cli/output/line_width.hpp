// Where lines of running text are broken.
#pragma once

#include <cstddef>

namespace gristwright::cli {

// text_width(); nowhere where COLUMNS is 1000 or more, as for a page that breaks its own lines.
std::size_t line_width();

}  // namespace gristwright::cli
