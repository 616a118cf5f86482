// The figures behind judging how well a yarn serves: each with its range, unit, mark and source,
// and each in this one place.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant reach{
    "trait missing that makes a yarn useless", 0.75, 0.6, 0.9, "of 1", Mark::judgement, ""};
inline constexpr Constant ease{"trait beyond the least wanted that leaves nothing to wish",
                               0.15,
                               0.10,
                               0.25,
                               "of 1",
                               Mark::judgement,
                               ""};
inline constexpr Constant cover_weight{"weight of cover", 0.7, 0.5, 1.0, "1", Mark::judgement, ""};
inline constexpr Constant fineness_weight{"weight of fineness", 0.9, 0.5, 1.0, "1",
                                          Mark::judgement,      ""};
inline constexpr Constant classes_away{"weight classes outside the usual that make a yarn useless",
                                       3.5,
                                       3,
                                       4,
                                       "classes",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant equipment_weight{"weight of equipment", 0.8, 0.5, 1.0, "1",
                                           Mark::judgement,       ""};
inline constexpr Constant borrowed{
    "equipment that must be borrowed", 0.5, 0.3, 0.7, "of 1", Mark::judgement, ""};
inline constexpr Constant tightness_tail{
    "tightness outside the band that makes cloth useless", 0.4, 0.3, 0.5, "1", Mark::judgement, ""};
inline constexpr Constant share_tail{"share of the greatest sett outside the band, useless",
                                     0.30,
                                     0.2,
                                     0.4,
                                     "1",
                                     Mark::judgement,
                                     ""};
inline constexpr Constant cloth_part{
    "part of drape that is the cloth's, not the yarn's", 0.6, 0.4, 0.8, "1", Mark::judgement, ""};
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

}  // namespace gristwright::constants
