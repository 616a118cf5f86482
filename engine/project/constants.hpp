// The figures behind plans: each with its range, unit, mark and source, and each in this
// one place.
#pragma once

#include <string_view>

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant weft_slack{
    "weft wasted and laid in slack",   0.03, 0.0, 0.05, "relative", Mark::common_practice,
    "beside picks x width in the reed"};
inline constexpr Constant shaft_loom_waste{
    "loom waste of a shaft loom", 70, 69, 91, "cm", Mark::read, "weavers' pages: 27 to 36 in"};
inline constexpr Constant least_waste{
    "least loom waste of one end", 5, 5, 20, "cm", Mark::judgement, "a card or a small frame"};
inline constexpr Constant most_waste{
    "most loom waste of one end", 300, 150, 300, "cm", Mark::judgement,
    "5 ft with a sample was met"};
inline constexpr Constant held_by_loom{
    "of the loom waste, what knots and back rod hold and no fringe is cut from",
    15,
    10,
    25,
    "cm",
    Mark::judgement,
    ""};
inline constexpr Constant no_fringe{"shortest fringe", 0, 0, 0, "cm", Mark::judgement, ""};
inline constexpr Constant longest_fringe{"longest fringe", 60, 30, 60, "cm", Mark::judgement, ""};
inline constexpr Constant pin_tails{"tails of a square on pins",
                                    0.2,
                                    0.15,
                                    0.3,
                                    "m a square",
                                    Mark::judgement,
                                    "begun and darned in, none for joining"};
inline constexpr Constant joins_and_tails{
    "yarn lost in joins and tails",        0.4, 0.2, 0.6, "m a piece", Mark::judgement,
    "a cast-on tail and two woven-in ends"};

inline constexpr Constant past_the_middle{
    "stitches past a heel flap's middle where its turn begins",
    2,
    1,
    3,
    "stitches",
    Mark::common_practice,
    "1 leaves a narrow heel, 3 a wide one"};

inline constexpr Constant crown_depth{
    "a crown's depth to the width round it",
    1.0 / 7,
    1.0 / 9,
    1.0 / 6,
    "1",
    Mark::derived,
    "eight sections, decreased every second round and from half way every round"};

inline constexpr Constant pieces_apart{"pieces of one kind that people make, beside their cloth",
                                       0.15,
                                       0.10,
                                       0.25,
                                       "relative",
                                       Mark::judgement,
                                       "as garments, scarves and cowls lie apart in print"};
inline constexpr Constant own_piece{"a piece of which the cloth was weighed, about its plan",
                                    0.05,
                                    0.03,
                                    0.08,
                                    "relative",
                                    Mark::judgement,
                                    "edges, seams, a length tried on"};

inline constexpr Constant plying_takes_up{
    "length that plying once more takes up", 0.07, 0.03, 0.12, "of each strand", Mark::judgement,
    "from the angle of a usual ply twist"};

inline constexpr Constant taken_beyond{"how far beyond its sizes an article is made for a body",
                                       0.10,
                                       0.05,
                                       0.15,
                                       "of its size",
                                       Mark::judgement,
                                       "further it is another garment: a child's"};

inline constexpr Constant hung_per_tex{
    "what an end of a warp holds before it is trusted", 1.0, 0.8, 1.5, "g/tex", Mark::judgement,
    "about the tension of a hand loom, and no more"};
inline constexpr Constant least_hung{
    "the least that is hung on it", 50, 30, 100, "g", Mark::judgement, ""};
inline constexpr Constant most_hung{
    "the most that is hung on it",
    250,
    200,
    300,
    "g",
    Mark::judgement,
    "a hand loom pulls less on one end than it feels: 45 g in a weaver's sum"};
inline constexpr Constant sized_below{
    "warp fitness below which a plied warp is sized",   0.35, 0.3, 0.45, "0 to 1", Mark::judgement,
    "two-ply carded Shetland, 0.47, is warped as it is"};
inline constexpr Constant gives_little{
    "elasticity below which a warp gives little", 0.3, 0.25, 0.35, "0 to 1", Mark::judgement,
    "alpaca, mohair, silk and plant fibre"};

// How far a cloth serves (served.hpp).
inline constexpr Constant reach{
    "trait missing that leaves least of a wish", 0.6, 0.45, 0.75, "of 1", Mark::judgement, ""};
inline constexpr Constant ease{"trait beyond the least wanted that leaves nothing to wish",
                               0.05,
                               0.0,
                               0.15,
                               "of 1",
                               Mark::judgement,
                               ""};
inline constexpr Constant least_wish{
    "least that a wish unmet leaves",   0.1, 0.02, 0.3, "of 1", Mark::judgement,
    "wishes lower, only needs rule out"};
inline constexpr Constant cover_weight{"weight of cover", 0.7, 0.5, 1.0, "1", Mark::judgement, ""};
inline constexpr Constant fineness_weight{"weight of fineness", 0.9, 0.5, 1.0, "1",
                                          Mark::judgement,      ""};
inline constexpr Constant borrowed{"suitability left where equipment must be borrowed",
                                   0.93,
                                   0.85,
                                   1.0,
                                   "of 1",
                                   Mark::judgement,
                                   ""};
inline constexpr Constant share_tail{"share of the greatest sett outside the band, useless",
                                     0.30,
                                     0.2,
                                     0.4,
                                     "1",
                                     Mark::judgement,
                                     ""};
inline constexpr Constant cloth_part{
    "part of drape that is the cloth's, not the yarn's", 0.6, 0.4, 0.8, "1", Mark::judgement, ""};
inline constexpr Constant loosest_web{"share of the greatest sett as loose as holds together",
                                      0.4,
                                      0.35,
                                      0.5,
                                      "of the greatest sett",
                                      Mark::judgement,
                                      ""};

// How much of a chest's growth another measure of the body takes part in: its own growth from one
// chest band to the next over the chest's, women S to XL and men S to 2X.
inline constexpr std::string_view body_survey =
    "medians of a public survey of bodies (US Army ANSUR II, 2012) by bands of the chest";
inline constexpr Constant neck_growth{"growth of the neck beside the chest",
                                      0.57,
                                      0.50,
                                      0.64,
                                      "of the chest's",
                                      Mark::derived,
                                      body_survey};
inline constexpr Constant upper_arm_growth{"growth of the upper arm beside the chest",
                                           0.92,
                                           0.87,
                                           0.98,
                                           "of the chest's",
                                           Mark::derived,
                                           body_survey};
inline constexpr Constant wrist_growth{"growth of the wrist beside the chest",
                                       0.35,
                                       0.31,
                                       0.38,
                                       "of the chest's",
                                       Mark::derived,
                                       body_survey};
inline constexpr Constant back_length_growth{"growth of the back's length beside the chest",
                                             0.33,
                                             0.32,
                                             0.34,
                                             "of the chest's",
                                             Mark::derived,
                                             body_survey};
inline constexpr Constant arm_length_growth{"growth of the arm's length beside the chest",
                                            0.14,
                                            0.12,
                                            0.15,
                                            "of the chest's",
                                            Mark::derived,
                                            body_survey};
inline constexpr Constant armhole_growth{
    "growth of the armhole's depth beside the chest",
    0.68,
    0.61,
    0.76,
    "of the chest's",
    Mark::memory,
    "the trade's charts of sizes: a depth of 17.1 to 21.0 cm for women S to XL, 22.2 to 27.3 cm "
    "for men S to 2X"};
inline constexpr Constant yoke_growth{"growth of a yoke's width beside the chest",
                                      0.95,
                                      0.92,
                                      0.98,
                                      "of the chest's",
                                      Mark::derived,
                                      "the body and both upper arms, less the underarms"};
inline constexpr Constant bind_off_rows{"yarn that a loose bind-off takes",
                                        3,
                                        2,
                                        4,
                                        "rows' yarn",
                                        Mark::common_practice,
                                        "each stitch is worked and drawn over the one before"};

}  // namespace gristwright::constants
