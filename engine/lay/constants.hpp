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
inline constexpr Constant loop_depth{"a loop's foot behind its legs, half of it",
                                     0.62,
                                     0.5,
                                     0.75,
                                     "of the yarn's thickness",
                                     Mark::judgement,
                                     "legs and feet lie one thickness apart and press a little"};
inline constexpr Constant purl_recedes{"a purl wale behind the knit ones beside it",
                                       0.35,
                                       0.2,
                                       0.6,
                                       "of the yarn's thickness",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant crossing_forward{"stitches that cross in front, in the midst of it",
                                           0.9,
                                           0.6,
                                           1.2,
                                           "of the yarn's thickness",
                                           Mark::judgement,
                                           ""};
inline constexpr Constant crimp_rise{"a thread over another above the middle of the cloth",
                                     0.36,
                                     0.25,
                                     0.5,
                                     "of the yarn's thickness",
                                     Mark::judgement,
                                     "half a thickness, squeezed where they press"};
inline constexpr Constant laid_in_cloth{
    "yarn in washed cloth, thick", 0.92, 0.8, 1.0, "of its laid thickness", Mark::judgement, ""};
inline constexpr Constant crisp_from{"definition from which stitches are drawn crisp",
                                     0.85,
                                     0.75,
                                     0.95,
                                     "of 1",
                                     Mark::judgement,
                                     ""};
inline constexpr Constant blurred_from{
    "definition down to which they blur", 0.10, 0.0, 0.2, "of 1", Mark::judgement, ""};
inline constexpr Constant usual_ply_twist{"plied twist when it was not measured",
                                          2.85,
                                          2.5,
                                          3.8,
                                          "turns per inch / sqrt(worsted count)",
                                          Mark::read,
                                          "a spinner's published records, knitting yarn"};

}  // namespace gristwright::constants
