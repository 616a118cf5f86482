// Cloth at true scale from the computed geometry, and beside it the same cloth from a smooth combed
// yarn of the same grist, so that the eye can compare. A drawing from measurements, not a
// photograph; the halo is seeded, so the same batch gives the same picture.
#pragma once

#include "cli/output/svg.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {

Svg cloth_picture(const Plan& plan, const Question& q);

}  // namespace gristwright::cli
