// The middle lines of yarn in cloth with their depth: what a relief is made from.
#pragma once

#include <vector>

#include "engine/lay/chart.hpp"
#include "engine/lay/knitted.hpp"

namespace gristwright::lay {

struct Spot {  // mm from the lower left corner of what is shown; z towards the eye
    double x = 0, y = 0, z = 0;
};

// A length of yarn that runs on unbroken: a row of loops, an end, a pick.
struct Strand {
    std::vector<Spot> line;
    int yarn = 0;  // 0: the first (the warp), 1: the second (the weft)
};

// The strands reach a few stitches or threads beyond the window of `width` by `height` mm.
std::vector<Strand> knitted_strands(const Chart& chart, const Spacing& spacing, double width,
                                    double height);
// Threads crimp over and under each other; spacings of the finished cloth in mm.
std::vector<Strand> woven_strands(const Chart& chart, double end, double pick, double thickness,
                                  double width, double height);

}  // namespace gristwright::lay
