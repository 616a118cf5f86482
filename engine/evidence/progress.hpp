// Weighing the ball as the work goes: metres used so far, and how far the rest will reach.
#pragma once

#include <string>
#include <vector>

#include "engine/evidence/yarn_places.hpp"
#include "engine/project/plan.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {

struct Weighing {
    double row = 0;       // rows worked when it was weighed; 0: before the first
    Mass ball;            // all yarn still to be used
    Length woven{};       // instead of rows, for a woven piece: length on the loom so far
    std::string piece{};  // whose rows they are: "body", "sleeve 2"; empty: the worked piece's
};

// A weighing that cannot follow the one before it, or that the plan has no room for. What stands
// before the first is the yarn as it was begun with.
struct DoubtfulWeighing : Refused {
    enum class Doubt {
        heavier_ball,
        heavier_than_batch,  // nothing was weighed before it
        earlier_row,
        less_cloth,
        too_many_rows,
        nothing_used,  // in so many rows
        no_weft_used,  // in so much cloth
    };
    DoubtfulWeighing(Doubt doubt, const Weighing& before, const Weighing& now);

    Doubt doubt;
    Weighing before, now;
};

// How well it was weighed: the scale's step (0: exact) and the relative margin of the yarn's grist.
struct Scale {
    Mass step{};
    double grist_margin = 0;
};

struct [[nodiscard]] Progress {
    Length used, left;        // metres
    Estimate<double> factor;  // metres used / metres the plan expected by then
    double last_row = 0;      // the last the yarn reaches, at the median
    double sure_row = 0;      // the last it reaches with the certainty asked
    bool reaches = false;     // the whole plan, with the certainty asked
    double chance = 0;        // that it reaches the whole plan
    Mass keep_for_rest;       // for the pieces after this one (the border), at the certainty asked
    double begin_rest_row = 0;  // the last row before they must begin; 0: no piece follows
};

// The piece in work when the ball is weighed: the first that this batch has a part in.
const PlanPiece& worked_piece(const Plan& plan);

// Where the work stood when it was weighed: the piece, which of those alike, the share of its rows.
// "sleeve 2" and "the second sleeve" are the second of those alike, "sleeve" the first. Throws
// Refused for a name that is no piece's, or where there are not so many alike.
YarnPlace place_of(const Plan& plan, const Weighing& weighing);

// Weighed before the first row of all.
bool before_the_work(const Plan& plan, const Weighing& weighing);

// The metres planned until that row of the worked piece, with the work that comes before it. Throws
// Refused where none of that piece is this batch's.
Length planned_by_row(const Plan& plan, double row);

// `start` is what the yarn weighed when the work began, unless the first weighing was before the
// work; weighings in the order they were made. Rows are told of the piece in work at the last; what
// is worked before it and after it follows the template's order. Throws DoubtfulWeighing, or
// Refused where there is no weighing.
Progress progress(const Plan& plan, LinearDensity grist, Mass start,
                  const std::vector<Weighing>& weighings, const Scale& scale = {});

// Whether the plan can hardly be true of a work that takes `factor` times what was planned.
bool far_from_plan(const Plan& plan, const Estimate<double>& factor);

struct [[nodiscard]] WeftProgress {
    Length left;              // metres of weft
    Estimate<double> factor;  // metres of weft for the length woven / what the plan expected
    Estimate<Length> more;    // length on the loom that the weft still reaches
    Length wanted;            // still to be woven, of the plan
    double chance = 0;        // that it reaches all of it
};

// The weft as planned, all of it: this batch's, or where it has none of it, the other yarn's.
Length weft_in_work(const Plan& plan);
// What it weighs: this batch, or where it has no part in the weft the other yarn, as far as
// that is known.
LinearDensity weft_grist(const Plan& plan, const YarnProfile& yarn);

// Weft only: the warp is on the loom, and what it takes is known. Two weighings tell how much weft
// goes into the length between them; one alone stands on the plan. Throws as progress().
WeftProgress weft_progress(const Plan& plan, LinearDensity grist,
                           const std::vector<Weighing>& weighings, const Scale& scale = {});

}  // namespace gristwright
