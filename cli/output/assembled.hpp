// An article put together, laid flat as it is worn or used: where each piece lies, in cm, x to the
// right and y down. Whatever an article of its kind does not usually have lies beside it.
#pragma once

#include <functional>
#include <vector>

#include "cli/output/path.hpp"
#include "engine/project/plan.hpp"

namespace gristwright::cli {

struct Placed {
    const PlanPiece* piece = nullptr;  // of the plan, which must outlive it
    Line edge;                         // closed
    std::function<Line(double)> row;   // the line of work after that share of its rows
    bool loose = false;                // not part of the shape: a band, a strap
    bool backwards = false;            // worked from the narrow end of its outline
    int layer = 0;                     // a higher one lies over the others
};

struct Assembled {
    std::vector<Placed> parts;  // each as often as its plan counts it; alike ones as they are made
    std::vector<Line> fringe;   // threads

    Bounds bounds(bool with_loose) const;
    // What its sizes are of: the cloth of the first thing of those that hang together, no fringe.
    // Of a pair the one, of six mats the first.
    Bounds measured() const;
};

Assembled assembled(const Plan& plan);

// Whether a woven cloth's ends are left as a fringe; shorter ones are turned in as a hem.
bool has_fringe(const Template& article);
// Woven on pins or nails: no loom's waste, no heddle.
bool is_on_frame(const Template& article);

}  // namespace gristwright::cli
