// The figures behind answers: each with its range, unit, mark and source.
#pragma once

#include <string_view>

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant stated_amount{"an amount that somebody states",
                                        0.10,
                                        0.05,
                                        0.20,
                                        "relative",
                                        Mark::judgement,
                                        "whole skeins and other hands; printings of one article "
                                        "differ by 20 to 100 % in mass"};
inline constexpr Constant stated_allowance{
    "of a stated amount, what is bought but not used",
    0.10,
    0.05,
    0.20,
    "relative",
    Mark::common_practice,
    "a pattern states what to buy: 5 to 20 % more than its sample took"};
inline constexpr Constant lightest_ball{
    "a ball so light that a mass in brackets behind so many is of each",
    15,
    10,
    20,
    "g",
    Mark::judgement,
    "'12 balls (50 g)' are of 50 g each; '10 minis, 100 g' weigh that together"};
inline constexpr Constant longest_cloth{
    "a length beyond which yarn is meant and not cloth",   5, 4, 10, "m", Mark::judgement,
    "the longest piece of one warp or one pair of needles"};
inline constexpr Constant counted_over_most{
    "the greatest number of inches or centimetres that stitches or ends are counted over",
    10,
    10,
    10,
    "1",
    Mark::common_practice,
    ""};
inline constexpr Constant closest_heddle{
    "the greatest bare number that is a heddle of so many ends to an inch",
    24,
    20,
    30,
    "ends per inch",
    Mark::judgement,
    "metric heddles and reeds are named from 25 to 10 cm on"};
inline constexpr Constant least_wraps{
    "the least number of wraps round a ruler's inch that anybody counts",
    6,
    5,
    8,
    "wraps",
    Mark::judgement,
    "fewer are wraps to wear"};
inline constexpr Constant least_height{
    "the least length that is how tall somebody is", 140, 130, 150, "cm", Mark::judgement,
    "of who is called tall or short by a figure"};
inline constexpr Constant greatest_height{
    "the greatest length that is how tall somebody is", 215, 205, 230, "cm", Mark::judgement, ""};
inline constexpr Constant smaller_costs{
    "suitability that a percent of the wished size is worth",
    1,
    0.5,
    2,
    "points per percent",
    Mark::judgement,
    "a shawl a little smaller is still that shawl, one by a third is another"};
inline constexpr Constant far_size{
    "how far beyond an article's sizes one that was said can be meant of it",
    2,
    1.5,
    3,
    "times",
    Mark::judgement,
    "a square of 170 cm is no square of a blanket of nine"};
inline constexpr Constant unit_told_by{
    "how far beyond an article's sizes a number without a unit still tells which it is in",
    1.25,
    1.1,
    1.5,
    "times",
    Mark::judgement,
    "an inch is 2.54 cm: in the other unit it is then another article"};
inline constexpr Constant fancy_unasked{
    "suitability by which a patterned cloth nobody asked for must be better than a plain one",
    20,
    10,
    30,
    "points",
    Mark::judgement,
    "who says only 'scarf' pictures a plain one"};
inline constexpr Constant blocking_slack{"of a size, what blocking and hands move it by anyway",
                                         0.03,
                                         0.02,
                                         0.05,
                                         "relative",
                                         Mark::judgement,
                                         ""};
inline constexpr Constant asked_character{
    "weight of definition when a fabric is asked for", 0.8, 0.5, 1.0, "1", Mark::judgement, ""};
inline constexpr Constant gauge_slack{"tightness outside the band at which a gauge is still kept",
                                      0.25,
                                      0.1,
                                      0.35,
                                      "relative",
                                      Mark::judgement,
                                      ""};
inline constexpr Constant spinning_losses{"fibre lost in carding, drafting, plying and sampling",
                                          0.10,
                                          0.05,
                                          0.25,
                                          "relative",
                                          Mark::judgement,
                                          ""};

// Shoes: a size tells the last, which is longer than the foot.
inline constexpr Constant shoe_paris_point{
    "length of a last that a European size adds", 2.0 / 3, 2.0 / 3, 2.0 / 3, "cm", Mark::memory,
    "the Paris point; ISO 19407 on shoe sizes"};
inline constexpr Constant shoe_uk_zero{"sizes from no length to a grown-up's British 0",
                                       25,
                                       25,
                                       25,
                                       "thirds of an inch",
                                       Mark::memory,
                                       "barleycorns; ISO 19407 on shoe sizes"};
inline constexpr Constant shoe_us_zero{
    "sizes from no length to a man's American 0", 24, 24, 24, "thirds of an inch", Mark::memory,
    "barleycorns; ISO 19407 on shoe sizes"};
inline constexpr Constant shoe_women_later{"sizes by which a woman's American ones run ahead",
                                           1.5,
                                           1,
                                           2,
                                           "sizes",
                                           Mark::common_practice,
                                           ""};
inline constexpr Constant shoe_spare{
    "room in a shoe before the toes", 1.5, 1, 2, "cm", Mark::common_practice, ""};
inline constexpr Constant shoe_eu_least{"the least number that is a European size",
                                        16,
                                        15,
                                        17,
                                        "sizes",
                                        Mark::common_practice,
                                        "a first walker's shoe"};
inline constexpr Constant shoe_eu_most{"the greatest European size", 50, 48, 52, "sizes",
                                       Mark::common_practice,        ""};
inline constexpr Constant greatest_clothes{
    "the greatest size of clothes by number", 60, 56, 64, "sizes", Mark::common_practice, ""};
inline constexpr Constant shoe_adult_most{
    "the greatest British or American size", 15, 14, 16, "sizes", Mark::common_practice, ""};

// Cloths that a knitter or a weaver takes where nobody names one: common practice, no source.
inline constexpr std::string_view everyday_fabrics[] = {
    "stocking stitch",
    "garter",
    "1x1 rib",
    "2x2 rib",
    "seed",
    "plain",
    "fulled stocking stitch",
    "weft-faced plain",
    "warp-faced plain",
    "pinned garter",
};

}  // namespace gristwright::constants
