// How a yarn looks in cloth: as thick, twisted and hairy as its measurements say.
#pragma once

#include "cli/question.hpp"
#include "engine/lay/relief.hpp"

namespace gristwright::cli {

// In washed cloth a yarn is nearly as thick as laid; only where threads press is it squeezed, and
// that the relief shows by itself. `plies` 1 or more.
lay::Fibres fibres_of(const YarnProfile& yarn, int plies, std::vector<Colour> colours = {});

// The batch as it would be, combed and drawn short, at the same grist.
YarnProfile combed_alike(const Question& q);

}  // namespace gristwright::cli
