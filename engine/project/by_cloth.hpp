// What a piece comes to, asked in one way of its knitted cloth and in another of its woven cloth. A
// plan's piece has exactly one of the two; one that has neither throws OurMistake.
#pragma once

#include <stdexcept>

#include "engine/project/plan.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {

template <class Knitted, class Woven>
auto by_cloth(const PlanPiece& piece, Knitted knitted, Woven woven) {
    if (piece.knit) return knitted(*piece.knit);
    if (piece.woven) return woven(*piece.woven);
    throw OurMistake("a piece is neither knitted nor woven");
}

}  // namespace gristwright
