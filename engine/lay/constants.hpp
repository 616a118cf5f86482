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
    "rows over which stitches cross", 7, 4, 9, "rows", Mark::judgement, ""};
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
inline constexpr Constant knit_curls{
    "a wale of knit stitches before purled ones, and a row of purled before knit ones",
    0.9,
    0.5,
    1.4,
    "of the yarn's thickness",
    Mark::judgement,
    "loops bend the cloth back across and forward along: ribs draw in, welts draw up"};
inline constexpr Constant courses_follow{
    "a course that stands across its wales where lace tilts them",
    0.6,
    0.4,
    1.0,
    "of the way",
    Mark::judgement,
    "the stitches give the rest"};
inline constexpr Constant long_row{
    "a row whose loops were wrapped twice, tall", 2.4, 2.0, 3.0, "rows", Mark::judgement, ""};
inline constexpr Constant crossing_forward{"stitches that cross in front, in the midst of it",
                                           0.9,
                                           0.6,
                                           1.2,
                                           "of the yarn's thickness",
                                           Mark::judgement,
                                           ""};
inline constexpr Constant closed_width{"three stitches closed to one, or not yet spread",
                                       0.55,
                                       0.4,
                                       0.7,
                                       "of a stitch's width",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant made_width{"three stitches made in one, spread out",
                                     0.88,
                                     0.7,
                                     1.0,
                                     "of their width",
                                     Mark::judgement,
                                     "four stitches share the room of two such groups"};
inline constexpr Constant made_rises{
    "and how far they bulge", 1.3, 0.8, 2.0, "of the yarn's thickness", Mark::judgement, ""};
inline constexpr Constant closed_recedes{
    "what closes them lies behind", 0.9, 0.5, 1.2, "of the yarn's thickness", Mark::judgement, ""};
inline constexpr Constant float_lifts{
    "what ties a float down, out of the cloth's plane, for each doubling of two threads passed",
    1.1,
    0.5,
    1.5,
    "of the yarn's thickness",
    Mark::judgement,
    "so that a waffle's cells lie deep between its ridges"};
inline constexpr Constant layers_part{"two cloths woven one over the other, apart",
                                      1.5,
                                      1.2,
                                      2.0,
                                      "of the yarn's thickness",
                                      Mark::judgement,
                                      ""};
inline constexpr Constant knit_layers_part{"two layers knitted at once, back to back, apart",
                                           2.2,
                                           1.8,
                                           2.6,
                                           "of the yarn's thickness",
                                           Mark::judgement,
                                           "each is a loop's depth and a yarn thick"};
inline constexpr Constant corner_folded{"corner folded over to show the other side",
                                        0.65,
                                        0.5,
                                        1.0,
                                        "of the picture's shorter side",
                                        Mark::judgement,
                                        ""};
inline constexpr Constant block_side_sinks{"the sides of a block picked up along others, below it",
                                           1.3,
                                           0.8,
                                           2.0,
                                           "of the yarn's thickness",
                                           Mark::judgement,
                                           ""};
inline constexpr Constant threads_together{"threads between which no other passes, apart",
                                           0.85,
                                           0.7,
                                           1.0,
                                           "of the yarn's thickness",
                                           Mark::judgement,
                                           "they slide together until they touch and press"};
inline constexpr Constant crossed_pair{"two ends that cross each other, side by side, apart",
                                       0.95,
                                       0.8,
                                       1.0,
                                       "of the yarn's thickness",
                                       Mark::judgement,
                                       "they hug each other, and the cloth opens between pairs"};
inline constexpr Constant wefts_in_a_shed{
    "two wefts in one shed, apart", 0.8, 0.6, 1.0, "of the yarn's thickness", Mark::judgement, ""};
inline constexpr Constant crimp_rise{"a thread over another above the middle of the cloth",
                                     0.36,
                                     0.25,
                                     0.5,
                                     "of the yarn's thickness",
                                     Mark::judgement,
                                     "half a thickness, squeezed where they press"};
inline constexpr Constant laid_in_cloth{
    "yarn in washed cloth, thick", 0.92, 0.8, 1.0, "of its laid thickness", Mark::judgement, ""};
inline constexpr Constant felted_spreads{
    "fibre of fulled cloth over its holes and edges", 0.55, 0.3, 0.8, "mm", Mark::judgement, ""};
inline constexpr Constant fulled_area{"area of cloth from which it is drawn as fulled hard",
                                      0.6,
                                      0.45,
                                      0.72,
                                      "of it before",
                                      Mark::judgement,
                                      "as the row of fulled stocking stitch"};
inline constexpr Constant felted_hides{
    "stitches that fulling hard hides", 0.82, 0.7, 1.0, "of their contrast", Mark::judgement, ""};
inline constexpr Constant drawn_crisp_from{"definition from which stitches are drawn crisp",
                                           0.85,
                                           0.75,
                                           0.95,
                                           "of 1",
                                           Mark::judgement,
                                           ""};
inline constexpr Constant blurred_from{
    "definition down to which they blur", 0.10, 0.0, 0.2, "of 1", Mark::judgement, ""};
inline constexpr Constant usual_ply_twist{
    "plied twist when it was not measured",
    2.85,
    2.5,
    3.8,
    "turns per inch / sqrt(worsted count)",
    Mark::judgement,
    "one spinner's page gives it for worsted singles; taken for plied yarn"};

inline constexpr Constant strand_past_one{"a strand past one stitch",
                                          0.24,
                                          0.23,
                                          0.25,
                                          "of a loop",
                                          Mark::derived,
                                          "1 / kw, fully relaxed (Munden, from memory)"};
inline constexpr Constant tuck_loop{
    "the yarn laid over a tucked stitch",
    0.9,
    0.7,
    1.0,
    "of a loop",
    Mark::derived,
    "brioche takes half as much again as stocking stitch (a page of "
    "2020), at gauges judged"};
inline constexpr Constant over_loop{"a yarn over", 0.9, 0.8, 1.0, "of a loop", Mark::judgement, ""};
inline constexpr Constant crossed_loop{"a loop that crosses",
                                       1.15,
                                       1.0,
                                       1.5,
                                       "loops",
                                       Mark::judgement,
                                       "published cables take at most 1.29 to 1.41 of plain"};
inline constexpr Constant long_loop{"a loop wrapped twice",
                                    1.83,
                                    1.7,
                                    2.0,
                                    "loops",
                                    Mark::derived,
                                    "a wrap round a 4 mm needle against the loop it makes"};
inline constexpr Constant dropped_bar{
    "a bar where a column was dropped", 0.8, 0.7, 0.9, "of a loop", Mark::derived,
    "its loop drawn straight"};
inline constexpr Constant bobble_loops{
    "a bobble: one stitch to five, four rows, and back", 16, 12, 20, "loops", Mark::derived,
    "counted, knitted tighter than the ground"};

inline constexpr Constant least_lace_growth{
    "a cloth with a few eyelets, blocked, against plain cloth",
    1.08,
    1.00,
    1.20,
    "of its area",
    Mark::derived,
    "the rows of eyelet lace, feather and fan and mesh"};
inline constexpr Constant growth_per_over{"how much further yarn overs open it",
                                          1.3,
                                          1.0,
                                          2.2,
                                          "of its area, if all were yarn overs",
                                          Mark::derived,
                                          "the rows of eyelet lace, feather and fan and mesh"};
inline constexpr Constant own_chart_margin{"metres by a chart alone",
                                           0.12,
                                           0.08,
                                           0.18,
                                           "relative",
                                           Mark::derived,
                                           "the rows of the table against their own charts"};
inline constexpr Constant definition_of_plain{
    "definition a plain surface asks", 0.10, 0.05, 0.2, "0 to 1", Mark::judgement, ""};
inline constexpr Constant definition_of_texture{
    "definition knits and purls ask", 0.30, 0.2, 0.4, "0 to 1", Mark::judgement, ""};
inline constexpr Constant definition_of_crossings{
    "definition crossed stitches ask", 0.60, 0.5, 0.7, "0 to 1", Mark::judgement, ""};
inline constexpr Constant peirce_thickness{
    "yarn in a loop of Peirce's shape, besides two rows and a stitch",
    5.94,
    5.94,
    5.94,
    "thicknesses of the yarn",
    Mark::memory,
    "F. T. Peirce 1947, Text. Res. J. 17:123"};
inline constexpr Constant growth_reach{
    "how far a chart's growth may be passed", 1.5, 1.3, 1.8, "of the growth", Mark::judgement, ""};
inline constexpr Constant growth_kept{"how little of a chart's growth may come of it",
                                      0.5,
                                      0.3,
                                      0.7,
                                      "of the growth",
                                      Mark::judgement,
                                      ""};

}  // namespace gristwright::constants
