// How a yarn looks in cloth: as thick, twisted and hairy as its measurements say.
#pragma once

#include "cli/output/svg.hpp"
#include "cli/question.hpp"
#include "engine/lay/cloth.hpp"

namespace gristwright::cli {

struct YarnLook {
    Length thickness;
    double turn = 0;  // mm of yarn to one turn of its plies; 0: singles
    int plies = 1;
    double bloom = 0;  // 0..1
};

// In washed cloth a yarn is thicker than squeezed and thinner than laid: halfway, as a ratio
// (judgement).
YarnLook look_of(const YarnProfile& yarn, int plies);

// The batch as it would be, combed and drawn short, at the same grist.
YarnProfile combed_alike(const Question& q);

// The cloth's yarn and halo in a picture `scale` units to the mm. Hairs stand anywhere along the
// yarn; the same each time.
Svg drawn_cloth(const lay::Cloth& cloth, const YarnLook& look, double scale);

}  // namespace gristwright::cli
