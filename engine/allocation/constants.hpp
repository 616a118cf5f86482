// The figures behind splits: each with its range, unit, mark and source.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant sample_loom_waste{"loom waste of a sample's own warp",
                                            35,
                                            25,
                                            60,
                                            "cm",
                                            Mark::judgement,
                                            "a short warp tied close"};
inline constexpr Constant cut_tail{
    "tail at each cut", 30, 15, 40, "cm", Mark::judgement, "two ends of 15 cm to weave in"};
inline constexpr Constant shortest_length{
    "least of a piece from one of several skeins", 200, 100, 300, "cm", Mark::judgement, ""};
inline constexpr Constant close_enough{
    "share by which a better split may exist before more is looked for",
    0.005,
    0.001,
    0.02,
    "of 1",
    Mark::judgement,
    "less than a skein's own margin"};
inline constexpr Constant worth_of_main{
    "worth of a metre in the main project", 1.0, 0.5, 2, "points per m", Mark::judgement, ""};
inline constexpr Constant worth_of_growth{"worth of a metre that makes an article larger",
                                          0.5,
                                          0.2,
                                          0.8,
                                          "points per m",
                                          Mark::judgement,
                                          ""};
inline constexpr Constant worth_of_knowing{
    "worth of a squared per cent of a sample's error", 4, 1, 10, "points", Mark::judgement, ""};
inline constexpr Constant worth_of_whole{
    "worth of a metre in a skein kept whole", 0.05, 0, 0.2, "points per m", Mark::judgement, ""};
inline constexpr Constant worth_of_fine_weft{
    "a metre of weft from the finest skein rather than from one twice as coarse",
    1,
    0.3,
    3,
    "points per m",
    Mark::judgement,
    "the finer skein for weft, the stronger for warp"};
inline constexpr Constant join_in_pair{"a join in one of a pair, by a join elsewhere",
                                       1.5,
                                       1,
                                       3,
                                       "relative",
                                       Mark::judgement,
                                       "it shows beside its twin"};
inline constexpr Constant join_low{
    "a join, when joins hardly matter", 1, 0, 2, "points", Mark::judgement, ""};
inline constexpr Constant join_usual{"a join", 4, 2, 8, "points", Mark::judgement, ""};
inline constexpr Constant join_high{
    "a join, when joins matter much", 15, 8, 30, "points", Mark::judgement, ""};
inline constexpr Constant first_growth{
    "worth of an article's first growth, by its growth at the middle",
    1.5,
    1.2,
    1.8,
    "relative",
    Mark::judgement,
    "the larger it is, the less more size is worth"};
inline constexpr Constant much_waste{
    "loom waste of a sample that is told", 0.35, 0.25, 0.5, "of its metres", Mark::judgement, ""};
inline constexpr Constant for_tails{
    "of the size another yarn reaches for, what its tails and whole ends leave",
    0.97,
    0.95,
    1.0,
    "of size",
    Mark::judgement,
    ""};

}  // namespace gristwright::constants
