// The figures behind how yarn is drawn in cloth: each with its range, unit, mark and source.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant loop_overlap{"a loop's head above the next row's foot",
                                       1.6,
                                       1.2,
                                       2.0,
                                       "of the yarn's thickness",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant purl_width{"a purl wale that falls back between knit ones",
                                     0.6,
                                     0.4,
                                     0.8,
                                     "of a knit one's width",
                                     Mark::judgement,
                                     "from how much ribbing draws in"};
inline constexpr Constant leaning{"a stitch knitted together with its neighbour",
                                  0.75,
                                  0.6,
                                  0.9,
                                  "of the way over",
                                  Mark::judgement,
                                  ""};
inline constexpr Constant eyelet_opens{
    "what a yarn over pushes aside", 0.30, 0.2, 0.4, "of a stitch's width", Mark::judgement, ""};
inline constexpr Constant crossing_rows{
    "rows over which stitches cross", 6, 4, 8, "rows", Mark::judgement, ""};
inline constexpr Constant crossing_spreads{"stitches that cross, half way, fill more of their room",
                                           0.45,
                                           0.3,
                                           0.6,
                                           "of their width",
                                           Mark::judgement,
                                           ""};
inline constexpr Constant usual_ply_twist{"plied twist when it was not measured",
                                          2.85,
                                          2.5,
                                          3.8,
                                          "turns per inch / sqrt(worsted count)",
                                          Mark::read,
                                          "a spinner's published records, knitting yarn"};

}  // namespace gristwright::constants
