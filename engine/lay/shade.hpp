// The depth buffer of a relief, and the light that falls on it.
#pragma once

#include "engine/lay/field.hpp"
#include "engine/lay/relief.hpp"

namespace gristwright::lay {

struct Hair {
    double x = 0, y = 0;  // mm, where it leaves the yarn
    double angle = 0, bend = 0, reach = 0;
    Colour colour;
};

class Canvas {
  public:
    explicit Canvas(const View& view);

    int width() const { return depth.width; }
    int height() const { return depth.height; }
    // Yarn at a pixel, `z` mm towards the eye, facing along `face`; hidden by what is nearer.
    void cover(int x, int y, double z, const Spot& face, const Colour& colour);
    bool covered(std::size_t i) const;
    // Whether what lies there is nearer the eye than `z` mm.
    bool hides(int x, int y, double z) const { return double{depth.at[depth.index(x, y)]} >= z; }

    Field depth;             // mm
    Field red, green, blue;  // of the yarn, 0..1
    Field lit;               // share of the light that the face turns to
    std::vector<Hair> hairs;
};

// 0..1: how far the yarn's own haze softens edges and fills holes, and how far cloth is fulled.
struct Haze {
    double blur = 0, felted = 0;
};
Picture shaded(const Canvas& canvas, const View& view, const Haze& haze);

}  // namespace gristwright::lay
