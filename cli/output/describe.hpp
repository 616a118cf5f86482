// Sentences about a yarn and a plan that several commands say alike.
#pragma once

#include <string>

#include "cli/question.hpp"
#include "engine/suitability/ranking.hpp"

namespace gristwright::cli {

JudgedPlan judged_plan(const Template& article, const Question& q);

// "Heron: 659 m, 148 g in 4 skeins; 4.45 m/g (2207 yd/lb), 225 tex"
std::string batch_line(const Question& q);
// "super fine by its grist, fine or super fine by its wraps"
std::string class_line(const YarnProfile& yarn);
// "one yarn: ..." / "this scale cannot tell ..."
std::string agreement_line(const Agreement& found);
// "90 %"
std::string percent(double share);
// "3.5 mm"; of a needle that is not known (0): "your swatch's".
std::string needle_words(Length known, const Units& units);
// "27 st and 36 rows/10 cm with 3.5 mm needles" or "40/10 cm heddle, 52 % of the greatest sett"
// `smaller`: a rib, for which the steps take needles one or two sizes smaller.
std::string making_line(const PlanPiece& piece, const Units& units, bool smaller = false);
// "enough if smaller: span 139 cm of the ideal 150 cm"
std::string reach_line(const Plan& plan, const Units& units);
// "Stands on: a washed swatch in stocking stitch"; empty when no swatch is known.
std::string stands_on(const YarnProfile& yarn);
// The skeins' lengths in their order.
std::vector<Length> lengths_of(const YarnProfile& yarn);
// What a person should beware of, for this article in this yarn.
// The template's own and what of the fibre prickles; then with them all that hold for this work.
std::vector<std::string> own_cautions(const Plan& plan, const YarnProfile& yarn,
                                      const Units& units);
std::vector<std::string> cautions(const Plan& plan, const Question& q);

}  // namespace gristwright::cli
