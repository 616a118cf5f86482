// A file that cannot be read, written or created, whatever was asked of it.
#pragma once

#include <stdexcept>

namespace gristwright::catalog {

struct StorageFailed : std::runtime_error {
    using std::runtime_error::runtime_error;
};

}  // namespace gristwright::catalog
