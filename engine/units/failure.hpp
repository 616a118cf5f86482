// Whose fault it is: families of failure, so that nobody is told that their data are wrong when we
// are. The third family, storage that fails, is of the catalogue (catalog/text/storage_failed.hpp).
#pragma once

#include <stdexcept>

namespace gristwright {

// What was given cannot be: the complaint says where, what, and what would be right.
struct Refused : std::invalid_argument {
    using std::invalid_argument::invalid_argument;
};

// A promise between parts of this program is broken. So are those that the standard library's own
// exceptions complain of: what is no Refused is never the person's mistake.
struct OurMistake : std::logic_error {
    using std::logic_error::logic_error;
};

}  // namespace gristwright
