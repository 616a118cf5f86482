// A planned cloth as strands of yarn, with the yarns that are in it and their colours: what a
// picture of it is made from.
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

#include "cli/question.hpp"
#include "engine/lay/relief.hpp"

namespace gristwright::cli {

struct LaidCloth {
    std::function<std::vector<lay::Strand>(double width, double height)> strands;  // mm
    double near_mm = 0;  // wide enough for a repeat and about ten stitches
    double half_mm = 0;  // of two layers, back to back: seen near, a corner is turned; else 0
    std::array<lay::Fibres, 2> yarns;
};

LaidCloth laid_cloth(const Plan& plan, const PlanPiece& piece, const YarnProfile& yarn,
                     const Question& q);

// Of a cloth in two yarns, what the second is drawn as: ", the second yarn drawn dark brown, ...".
// Empty: there is one.
std::string second_words(const Plan& plan, const PlanPiece& piece, const Question& q);

}  // namespace gristwright::cli
