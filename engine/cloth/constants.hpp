// The figures behind cloth: each with its range, unit, mark and source, and each in this one place.
#pragma once

#include <array>

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr std::string_view munden = "Munden 1959; Knapton et al. 1968 (plain wool)";

// Of plain wool: w = kw / l and c = kc / l, in the order of Relaxation.
struct LoopConstants {
    Constant kw, kc;
};

inline constexpr std::array loop_constants{
    LoopConstants{{"kw, dry-relaxed", 3.8, 3.7, 3.9, "1", Mark::memory, munden},
                  {"kc, dry-relaxed", 5.0, 4.8, 5.2, "1", Mark::memory, munden}},
    LoopConstants{{"kw, wet-relaxed", 4.1, 4.0, 4.2, "1", Mark::memory, munden},
                  {"kc, wet-relaxed", 5.3, 5.1, 5.5, "1", Mark::memory, munden}},
    LoopConstants{{"kw, fully relaxed", 4.2, 4.1, 4.3, "1", Mark::memory, munden},
                  {"kc, fully relaxed", 5.5, 5.3, 5.7, "1", Mark::memory, munden}},
};

inline constexpr std::string_view needle_fit =
    "least squares on the trade's weight table, rows 0 to 5";
inline constexpr Constant wraps_to_stitches{
    "stitches per laid wrap, ordinary cloth",        0.43, 0.40, 0.45, "1", Mark::derived,
    "the trade's weight table (gauge against wraps)"};
inline constexpr Constant between_knitters{"gauge between knitters, same yarn and needle",
                                           0.056,
                                           0.04,
                                           0.08,
                                           "relative",
                                           Mark::read,
                                           "a swatch trial of 2016, median"};
inline constexpr Constant needle_slope{
    "needle per loop length", 0.2405, 0.23, 0.25, "mm/mm", Mark::derived, needle_fit};
inline constexpr Constant needle_offset{"needle at no loop", -0.724,    -1.0, -0.4, "mm",
                                        Mark::derived,       needle_fit};
inline constexpr Constant crimp_factor{
    "crimp per squared sett x diameter",     9.0 / 16, 0.5, 0.62, "1", Mark::derived,
    "Peirce 1937, as read in teaching notes"};
inline constexpr Constant no_swatch{
    "metres of knitting before any swatch",  0.12, 0.08, 0.18, "relative", Mark::judgement,
    "to be calibrated on published articles"};
inline constexpr Constant counted_swatch{"metres of knitting with a washed swatch's gauge",
                                         0.07,
                                         0.05,
                                         0.10,
                                         "relative",
                                         Mark::judgement,
                                         "to be calibrated on published articles"};
inline constexpr Constant besides_gauge{
    "metres per area at a known gauge", 0.06, 0.04, 0.08, "relative", Mark::judgement,
    "loop shape, joins, tails"};
inline constexpr Constant swatch_gauge{
    "gauge counted on a washed swatch",          0.03, 0.014, 0.056, "relative", Mark::derived,
    "0.25 to 0.5 stitch over 4 in and over 1 in"};
inline constexpr Constant habit_carried{
    "gauge habit carried to another firmness", 0.05, 0.03, 0.08, "relative", Mark::judgement, ""};
inline constexpr Constant before_sample{
    "metres of weaving before any sample",  0.08, 0.05, 0.12, "relative", Mark::judgement,
    "to be calibrated on published records"};
inline constexpr Constant after_sample{
    "metres of weaving after a washed sample", 0.04, 0.03, 0.06, "relative", Mark::judgement, ""};
inline constexpr Constant hole_share{"room of a rigid heddle's hole",
                                     0.5,
                                     0.4,
                                     0.6,
                                     "of the space between ends",
                                     Mark::judgement,
                                     ""};
inline constexpr Constant shed_room{
    "room a yarn needs to slide", 1.3, 1.2, 1.5, "of its squeezed width", Mark::judgement, ""};

inline constexpr Constant long_float{
    "a float in woven cloth that catches in use",
    10,
    8,
    15,
    "mm",
    Mark::common_practice,
    "a handbook of 2015 calls floats of three ends generally safe"};
inline constexpr Constant long_strand{"a strand behind two-colour knitting that wants catching",
                                      25,
                                      20,
                                      30,
                                      "mm",
                                      Mark::common_practice,
                                      ""};

}  // namespace gristwright::constants
