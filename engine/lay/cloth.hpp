// How yarn lies in a piece of cloth: the middle lines of its yarn, seen from the right side. What
// the pictures draw and what cover is counted on.
#pragma once

#include <vector>

namespace gristwright::lay {

struct Place {  // mm from the lower left corner of what is shown; y upwards
    double x = 0, y = 0;
};

// A stretch of yarn. A higher layer lies in front; in one layer what comes later does.
struct Run {
    std::vector<Place> line;  // at least two places
    int layer = 0;
    bool second = false;  // of the second yarn, in stranded knitting
    bool shaded = false;  // behind what is next to it
};

struct Cloth {
    double width = 0, height = 0;  // mm shown; runs reach beyond
    double thickness = 0;          // of the yarn as it lies, mm
    std::vector<Run> runs;         // drawn in this order
};

double length(const Run& run);  // mm
// The place `along` mm from the run's start; its end when that is longer than the run.
Place at(const Run& run, double along);

// Yarn inside the window, mm: what the drawing holds.
double yarn_shown(const Cloth& cloth);

// Share of the window that yarn hides, 0 (no yarn) to 1 (closed), from a fine grid of points.
double cover(const Cloth& cloth);

// The same of straight ends and picks, thicknesses by spacings: c1 + c2 - c1 c2. F. T. Peirce 1937,
// J. Text. Inst. 28 T45 (from memory).
double woven_cover(double end_share, double pick_share);

// In the order to draw: by layer, else as made.
void sort_by_layer(Cloth& cloth);

}  // namespace gristwright::lay
