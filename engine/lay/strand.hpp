// How yarn lies in a piece of cloth: its middle lines with their depth, seen from the right side.
// What a relief is made from.
#pragma once

#include <vector>

namespace gristwright::lay {

struct Spot {  // mm from the lower left corner of what is shown; z towards the eye
    double x = 0, y = 0, z = 0;
};

// A length of yarn that runs on unbroken: a row of loops, an end, a pick.
struct Strand {
    std::vector<Spot> line;
    // 0: the first, 1: the second; of woven cloth in one colour the warp and the weft.
    int yarn = 0;
};

// Yarn inside the window from (0, 0) to (width, height), mm along the cloth: what a drawing holds.
double yarn_shown(const std::vector<Strand>& strands, double width, double height);

}  // namespace gristwright::lay
