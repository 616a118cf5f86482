// The outlines that pieces are made in: area, stitches and rows, and how far along the yarn gets.
//
// Every shape is named by two finished sizes, `width` and `length`:
//   rectangle, tube      width (of a tube: all the way round) and length
//   triangle             from the middle of the neck; width is the span, length follows (span / 2)
//   bias triangle        a right-angled corner with two sides of `width`
//   half circle          width is the straight edge; worked out from its middle
//   crescent             width is the span, length the depth; a segment of a parabola
//   square from corner   width is the side; grows to the diagonal, then shrinks
//   circle               width is the diameter
//   cap                  a tube closed by a crown: width is round the head, length brim to top
//   taper                length, from `width` down to `narrow`
#pragma once

#include <optional>
#include <string_view>

#include "engine/units/quantity.hpp"

namespace gristwright {

enum class Shape {
    rectangle,
    tube,
    triangle,
    bias_triangle,
    half_circle,
    crescent,
    square_from_corner,
    circle,
    cap,
    taper,
};
std::string_view words(Shape shape);
std::optional<Shape> shape_named(std::string_view word);

struct Outline {
    Shape shape = Shape::rectangle;
    Length width, length, narrow;
};

Area area(const Outline& outline);

// Stitches of the widest row and rows in all, for a gauge of w stitches and c rows. A triangle from
// the neck is knitted as two wedges that gain a stitch a row each and is blocked straight, so its
// rows follow from its area; the rest keep their drawn height.
struct StitchesRows {
    double stitches = 0, rows = 0;
};
StitchesRows stitches_and_rows(const Outline& outline, Gauge stitches, Gauge rows);

// Share of the yarn used when a share of the rows is worked, 0..1 to 0..1, and back.
double yarn_after_rows(const Outline& outline, double rows_share);
double rows_for_yarn(const Outline& outline, double yarn_share);

// How deep a cap's crown is, as a share of its length.
double crown_of(const Outline& cap);
// The area between a cap and the tube that it is cut from; of other shapes none.
Area crown_leaves_out(const Outline& outline);

// True where width and length both follow from `width`.
bool one_measure(Shape shape);

}  // namespace gristwright
