// Cloth as a relief: each ply a helix round its strand's middle line, stamped into a depth buffer,
// lit from the upper left, shaded where it lies deep, with the yarn's own halo.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "engine/lay/strand.hpp"
#include "engine/yarn/colour.hpp"

namespace gristwright::lay {

// How one yarn looks.
struct Fibres {
    double thickness = 1;         // as it lies, mm
    double turn = 0;              // mm of yarn to a turn of its plies; 0: singles
    int plies = 1;                // 1 or more
    double halo = 0;              // 0 smooth .. 1 hidden in its own hairs
    double blur = 0;              // 0 crisp .. 1 stitches cannot be read: soft edges, filled holes
    double felted = 0;            // 0 stitches open .. 1 fulled hard: closed under its own fibre
    std::vector<Colour> colours;  // one, or several that follow each other; none: undyed
    double colour_length = 300;   // mm of yarn in each, when there are several
};

struct View {
    double width = 1, height = 1;  // mm
    double pixels_per_mm = 20;
};

struct Picture {
    int width = 0, height = 0;      // pixels
    std::vector<std::uint8_t> rgb;  // rows from the top
    double pixels_per_mm = 1;
    double cover = 0;  // share of the pixels that yarn hides
};

// The same picture for the same input, on every machine. `yarns` by Strand::yarn.
Picture relief(const std::vector<Strand>& strands, const std::array<Fibres, 2>& yarns,
               const View& view);

// How far light and dark still part when everything under `blur` mm runs together: the standard
// deviation of the luminance over its mean.
double contrast(const Picture& picture, double blur);

}  // namespace gristwright::lay
