// The figures behind what people type: what can be measured at all. Readers refuse what lies
// outside, and choose between two readings by it.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant finest_grist{"finest yarn that a skein is read as",
                                       3,
                                       2,
                                       10,
                                       "tex",
                                       Mark::judgement,
                                       "decides between two readings of a point or comma"};
inline constexpr Constant thickest_grist{
    "thickest yarn that a skein is read as",           20000, 5000, 20000, "tex", Mark::judgement,
    "decides between two readings of a point or comma"};
inline constexpr Constant longest_skein{
    "longest yarn in one skein",
    20000,
    10000,
    50000,
    "m",
    Mark::judgement,
    "a mark that may part thousands is asked about when neither reading is longer"};
inline constexpr Constant fewest_wraps{"fewest wraps of a yarn", 0.5, 0.5, 2, "wraps per inch",
                                       Mark::judgement,          ""};
inline constexpr Constant most_wraps{"most wraps of a yarn", 200, 100, 200, "wraps per inch",
                                     Mark::judgement,        ""};
inline constexpr Constant least_twist{"least twist of a yarn", 0.1, 0.1, 0.5, "turns per inch",
                                      Mark::judgement,         ""};
inline constexpr Constant most_twist{"most twist of a yarn", 100, 60, 100, "turns per inch",
                                     Mark::judgement,        ""};
inline constexpr Constant coarsest_gauge{"coarsest knitting", 0.3, 0.3, 1, "stitches per inch",
                                         Mark::judgement,     ""};
inline constexpr Constant finest_gauge{"finest knitting", 40, 20, 40, "stitches per inch",
                                       Mark::judgement,   ""};
inline constexpr Constant widest_sett{"widest sett",   0.5, 0.5, 2, "ends per inch",
                                      Mark::judgement, ""};
inline constexpr Constant closest_sett{"closest sett",  300, 120, 300, "ends per inch",
                                       Mark::judgement, ""};

inline constexpr Constant shortest_staple{"shortest staple",       2, 2, 10, "mm", Mark::judgement,
                                          "noils and short cotton"};
inline constexpr Constant longest_staple{
    "longest staple", 1200, 400, 1200, "mm", Mark::judgement, "flax line; wools end near 400"};
inline constexpr Constant narrowest_loom{
    "narrowest loom", 3, 3, 10, "cm", Mark::judgement, "band looms; rigid heddles begin near 20"};
inline constexpr Constant widest_loom{"widest loom", 400, 180, 400, "cm", Mark::judgement, ""};
inline constexpr Constant finest_needle{"finest needle", 0.5, 0.5, 0.7, "mm", Mark::judgement, ""};
inline constexpr Constant thickest_needle{"thickest needle",     40, 25, 40, "mm", Mark::judgement,
                                          "sold sizes end at 25"};
inline constexpr Constant label_rounding{
    "two units on one label that say the same",     0.04, 0.02, 0.05, "relative", Mark::judgement,
    "labels round to whole grams, ounces to tenths"};

}  // namespace gristwright::constants
