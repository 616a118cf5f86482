// The figures behind judging how well a yarn serves: each with its range, unit, mark and source,
// and each in this one place.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant least_fineness{
    "least that a wrong weight leaves", 0.02, 0.01, 0.1, "of 1", Mark::judgement, ""};
inline constexpr Constant standing_weight{"weight of standing among ordinary yarns",
                                          0.35,
                                          0.25,
                                          0.5,
                                          "of 1",
                                          Mark::judgement,
                                          "0 to 0.5 agree alike with published uses "
                                          "(docs/suitability.md); below 0.3 mats and pouches lead"};
inline constexpr Constant many_pieces{"pieces alike from which an article is joined from dozens",
                                      24,
                                      16,
                                      40,
                                      "",
                                      Mark::judgement,
                                      ""};
inline constexpr Constant pieced_calls{
    "place that is left to an article joined from dozens of pieces",
    0.9,
    0.8,
    1.0,
    "of 1",
    Mark::judgement,
    "the way of making is chosen, not the yarn for it"};
inline constexpr Constant another_calls{
    "place that is left to an article that needs another yarn beside this one",
    0.93,
    0.85,
    1.0,
    "of 1",
    Mark::judgement,
    "what can be begun with what is there comes first"};
inline constexpr Constant fulled_calls{"place that is left to an article that is fulled hard",
                                       0.95,
                                       0.85,
                                       1.0,
                                       "of 1",
                                       Mark::judgement,
                                       "chosen by who wants felt, and it cannot be undone"};
inline constexpr Constant named_again{
    "place that is left to a second article of a kind named already",
    0.85,
    0.75,
    0.95,
    "of 1",
    Mark::judgement,
    "a second shawl before a band that nobody asked for; never four mats"};
inline constexpr Constant choosy_weight{
    "part of an article's place that is lost where every other yarn serves it as well",
    0.06,
    0.0,
    0.15,
    "of 1",
    Mark::judgement,
    "what few yarns serve well is what one that does is for: cables before a plain cowl"};
inline constexpr Constant smaller_weight{
    "part of an article's place that is lost at the smallest size that is of use",
    0.05,
    0.03,
    0.06,
    "of 1",
    Mark::judgement,
    "of two alike the one that comes out as large as it ought to be is named first: a triangle of "
    "ordinary size before a stole that hardly wraps"};
inline constexpr Constant not_known_leaves{
    "suitability left where neither fibre nor plies are known",
    0.85,
    0.75,
    0.95,
    "of 1",
    Mark::judgement,
    "of an unknown yarn nothing can be said to serve well"};
inline constexpr Constant cobweb_from{
    "grist from which a lace yarn is cobweb", 12, 10, 15, "m/g", Mark::common_practice, ""};
inline constexpr Constant well_used{
    "share of the batch that is well used", 0.55, 0.3, 0.7, "of 1", Mark::judgement, ""};
inline constexpr Constant use_weight{"part of an article's place that its use of the batch decides",
                                     0.3,
                                     0.15,
                                     0.4,
                                     "of 1",
                                     Mark::judgement,
                                     "two kilograms are spun for pullovers, not for a pouch"};
inline constexpr Constant classes_away{"weight classes outside the usual that make a yarn useless",
                                       2.5,
                                       2,
                                       3.5,
                                       "classes",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant equipment_weight{"weight of equipment", 0.8, 0.5, 1.0, "1",
                                           Mark::judgement,       ""};
inline constexpr Constant tightness_tail{
    "tightness outside the band that makes cloth useless", 0.4, 0.3, 0.5, "1", Mark::judgement, ""};
inline constexpr Constant serves_well_from{"serves well from", 80, 75, 85, "points",
                                           Mark::judgement,    ""};
inline constexpr Constant serves_from{"serves from", 60, 55, 65, "points", Mark::judgement, ""};
inline constexpr Constant serves_poorly_from{"serves poorly from", 35, 30, 40, "points",
                                             Mark::judgement,      ""};
inline constexpr Constant article_price{"metres' worth that a further article must earn",
                                        0.03,
                                        0.0,
                                        0.1,
                                        "of the batch",
                                        Mark::judgement,
                                        "one large piece before crumbs"};
inline constexpr Constant soft_twist{
    "soft plied twist", 2.0, 1.6, 2.4, "turns per inch / sqrt(worsted count)", Mark::judgement, ""};
inline constexpr Constant ordinary_twist{
    "ordinary plied twist", 2.7, 2.3, 3.1, "turns per inch / sqrt(worsted count)",
    Mark::judgement,        ""};
inline constexpr Constant firm_twist{
    "firm plied twist", 3.4, 3.0, 3.8, "turns per inch / sqrt(worsted count)", Mark::judgement, ""};
inline constexpr Constant twist_play{"twist that does as well, to either side",
                                     0.4,
                                     0.3,
                                     0.5,
                                     "turns per inch / sqrt(worsted count)",
                                     Mark::judgement,
                                     ""};
inline constexpr Constant ply_take_up{"length that plying leaves of the singles",
                                      0.95,
                                      0.90,
                                      0.98,
                                      "of 1",
                                      Mark::common_practice,
                                      ""};
inline constexpr Constant singles_for_ply{"singles' turns for each plied turn, balanced",
                                          1.5,
                                          1.35,
                                          1.7,
                                          "1",
                                          Mark::common_practice,
                                          "two thirds of the singles' twist goes back in plying"};
inline constexpr Constant most_fibres{
    "fibres that a recipe names", 5, 3, 6, "", Mark::judgement, ""};
inline constexpr Constant group_width{"range of softness that only a group of fibres has",
                                      0.2,
                                      0.18,
                                      0.25,
                                      "of 1",
                                      Mark::judgement,
                                      ""};
inline constexpr Constant nearly_as_well{"points below the best that still serve nearly as well",
                                         10,
                                         5,
                                         15,
                                         "points",
                                         Mark::judgement,
                                         ""};
inline constexpr Constant clearly_better{
    "points by which a less simple way must be better", 1, 0.5, 2, "points", Mark::judgement, ""};
inline constexpr Constant ample_metres{
    "yarn that every article reaches with", 20000, 10000, 50000, "m", Mark::judgement, ""};
inline constexpr Constant loosest_knit{"tightness of knitting as loose as holds together",
                                       0.6,
                                       0.5,
                                       0.7,
                                       "sqrt(tex)/mm",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant firmest_knit{
    "tightness of knitting as firm as board", 1.6, 1.5, 1.8, "sqrt(tex)/mm", Mark::judgement, ""};
inline constexpr Constant factor_worth_saying{
    "a factor that lacks so much is told", 0.04, 0.03, 0.05, "of 1", Mark::judgement,
    "a trait is not known to less"};
inline constexpr Constant worth_praising{
    "least weight and wish of what is told in favour", 0.3, 0.2, 0.4, "of 1", Mark::judgement, ""};
inline constexpr Constant worth_a_part{
    "share of the batch that makes a part of an article worth naming",
    0.3,
    0.2,
    0.5,
    "of the batch",
    Mark::judgement,
    ""};

}  // namespace gristwright::constants
