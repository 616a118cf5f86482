// A place on the cloth.
#pragma once

namespace gristwright::lay {

struct Place {  // mm from the lower left corner of what is shown; y upwards
    double x = 0, y = 0;
};

}  // namespace gristwright::lay
