#include "engine/project/heel.hpp"

#include <algorithm>

#include "engine/project/constants.hpp"

namespace gristwright {

HeelTurn turned(int flap) {
    const int past = static_cast<int>(constants::past_the_middle);
    // Beyond the first row's stitches, the two that it takes together and the one after them.
    const int left = std::max(0, flap / 2 - past - 3);
    HeelTurn out;
    out.rows = 2 * (1 + (left + 1) / 2);  // each takes up two of those left on its side
    out.stitches = flap - out.rows;
    out.first = std::min(out.stitches, 2 * past + 4);
    return out;
}

int taken_up(int rows) { return (rows + 1) / 2; }

int gusset_of(int flap, int rows) {
    return std::max(0, 2 * taken_up(rows) + turned(flap).stitches - flap);
}

}  // namespace gristwright
