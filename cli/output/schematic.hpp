// A plan drawn to scale: each piece with its sizes, its direction of work and where skeins end;
// woven panels with their warp from end to end.
#pragma once

#include <vector>

#include "cli/output/describe.hpp"
#include "cli/output/svg.hpp"

namespace gristwright::cli {

Svg plan_picture(const JudgedPlan& judged, const Question& q);

// An outline as it lies flat, in cm: a tube and a cap are folded to half their width.
struct Flat {
    double width = 0, height = 0;
};
Flat flat(const Outline& outline);

// How a shape is drawn inside the box whose upper left corner is `corner`.
Path outline_path(const Outline& outline, Point corner, Flat box);
// The line of work after that share of the rows.
Path row_line(const Outline& outline, Point corner, Flat box, double rows_share);
// An arrow from the first row towards the last.
Path work_arrow(const Outline& outline, Point corner, Flat box);

}  // namespace gristwright::cli
