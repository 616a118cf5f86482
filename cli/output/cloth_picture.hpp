// Cloth at true scale from the computed geometry, and beside it the same cloth from a smooth combed
// yarn of the same grist, so that the eye can compare. A drawing from measurements, not a
// photograph; the halo is seeded, so the same batch gives the same picture.
#pragma once

#include "cli/output/svg.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {

Svg cloth_picture(const Plan& plan, const Question& q);

// For a page, which says the words itself: what cloth it is, and about ten of its stitches.
struct ClothNear {
    std::string about;
    Svg near;
};
ClothNear cloth_near(const Plan& plan, const Question& q);

// What the stitches of its cloth need to read, 0 to 1.
double definition_wanted(const Plan& plan);

// The same words, and 6 x 5 cm of it as large as life.
struct ClothAcross {
    std::string about;
    Svg picture;
};
ClothAcross cloth_across(const Plan& plan, const Question& q, const std::string& whose);

// The same, and 6 x 5 cm of the cloth as large as life, from this yarn and from a combed one.
struct ClothViews {
    std::string answer, about;
    Svg near, yours, combed;
};
ClothViews cloth_views(const Plan& plan, const Question& q);

}  // namespace gristwright::cli
