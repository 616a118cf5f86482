// The order in which the pieces of an article are worked: a hat that is begun at its brim has the
// brim first, though its body is the piece that a plan is about.
#pragma once

#include <vector>

#include "engine/project/plan.hpp"

namespace gristwright {

struct Worked {
    std::size_t piece = 0;  // of the template's as listed, and of its plan's
    int which = 1;          // of those alike, from 1
};

// Every piece as often as it is made, in the order that the template names under `worked`: a name
// as often as there are alike, or once for all of them one after another. Where it names none: as
// listed. Throws Refused for a name that is no piece's, one left out, or one too often or too
// seldom; a template that was read never does.
std::vector<Worked> order_of_work(const Template& article);

// The plan's pieces, each once, by when the first of those alike is worked.
std::vector<const PlanPiece*> pieces_as_worked(const Plan& plan);

}  // namespace gristwright
