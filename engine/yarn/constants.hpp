// The figures behind yarn: each with its range, unit, mark and source, and each in this one place.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr std::string_view handspun = "published handspun skeins (laid wraps), small number";
inline constexpr Constant washed_from_reel{
    "washed length of a skein measured on the reel", 0.90, 0.72, 1.0, "of it", Mark::judgement,
    "one published skein kept 0.72; most lose less"};
inline constexpr Constant washed_from_rest{"washed length of a skein measured off the reel",
                                           0.97,
                                           0.93,
                                           1.0,
                                           "of it",
                                           Mark::judgement,
                                           ""};
inline constexpr Constant wraps_per_root_grist{
    "laid wraps per inch from sqrt(yd/lb)",
    0.37,
    0.26,
    0.53,
    "1",
    Mark::derived,
    "the trade's weight table, ordinary yarn; the range from eight published handspun wools"};
inline constexpr Constant packed_to_laid{
    "laid wraps for one packed wrap",
    0.5,
    0.33,
    0.6,
    "1",
    Mark::derived,
    "published counts of both kinds; they differ two- to threefold"};
inline constexpr Constant no_consistency{"spread between skeins that leaves no consistency",
                                         0.15,
                                         0.10,
                                         0.20,
                                         "relative",
                                         Mark::judgement,
                                         ""};
inline constexpr Constant thickest_yarn{
    "thickest handspun yarn", 2500, 2000, 5000, "tex", Mark::judgement, "questioned, not refused"};
inline constexpr Constant finest_yarn{"finest handspun yarn",   10, 10, 20, "tex", Mark::judgement,
                                      "questioned, not refused"};
inline constexpr Constant relaxation_half_width{
    "relaxation of a skein",
    0.02,
    0.01,
    0.28,
    "relative",
    Mark::judgement,
    "half-width for a rested skein; a skein straight off the reel lost 28 % on washing in one "
    "spinner's published record (2014)"};
inline constexpr Constant humidity_half_width{"humidity at the scale",
                                              0.15,
                                              0.05,
                                              0.25,
                                              "relative humidity",
                                              Mark::judgement,
                                              "half-width of an unheated or a heated room"};
inline constexpr Constant mass_per_humidity{
    "mass of wool per relative humidity",
    0.18,
    0.15,
    0.20,
    "relative mass per unit RH",
    Mark::memory,
    "Morton and Hearle, Physical Properties of Textile Fibres"};
inline constexpr Constant combed_packing{
    "packing of combed short-draw wool", 0.18, 0.14, 0.22, "1", Mark::derived, handspun};
inline constexpr Constant carded_packing{
    "packing of carded long-draw wool", 0.11, 0.07, 0.15, "1", Mark::derived, handspun};
inline constexpr Constant worsted_c{
    "Ashenhurst's C, worsted", 0.90, 0.88, 0.92, "1", Mark::read, "Ashenhurst"};
inline constexpr Constant woollen_c{
    "Ashenhurst's C, woollen", 0.84, 0.82, 0.86, "1", Mark::read, "Ashenhurst"};
inline constexpr Constant between_people{
    "wraps counted by another person", 0.07, 0.05, 0.10, "relative", Mark::judgement, ""};
inline constexpr Constant prickling{"fibre that prickles",  30.5, 30, 31, "micron", Mark::read,
                                    "Riverina Wool Testers"};
inline constexpr Constant variation{"coefficient of variation of fibre diameter",
                                    0.22,
                                    0.15,
                                    0.30,
                                    "relative",
                                    Mark::read,
                                    "Riverina Wool Testers (range); the middle is our judgement"};
inline constexpr Constant own_doubt{"a trait with everything known",
                                    0.10,
                                    0.05,
                                    0.20,
                                    "of 1",
                                    Mark::judgement,
                                    "two practised spinners differ by about this much"};
inline constexpr Constant habit_between_batches{
    "gauge against the table between one person's batches",
    0.06,
    0.04,
    0.08,
    "relative",
    Mark::judgement,
    ""};

inline constexpr Constant alike_grist{
    "difference in grist that neither hand nor eye finds in cloth",
    0.10,
    0.08,
    0.12,
    "relative",
    Mark::common_practice,
    "10 % in grist is 4.9 % in thickness"};
inline constexpr Constant alternated_grist{
    "difference in grist that alternating skeins still hides",
    0.20,
    0.15,
    0.20,
    "relative",
    Mark::common_practice,
    ""};
inline constexpr Constant consistent_grist{"spread of a consistent spinner's skeins",
                                           0.06,
                                           0.05,
                                           0.06,
                                           "relative",
                                           Mark::read,
                                           "a norm for hand-spun cotton; a spinner's own record "
                                           "of 5 %"};

}  // namespace gristwright::constants
