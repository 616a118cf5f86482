// The figures behind evidence: each with its range, unit, mark and source.
#pragma once

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr std::string_view swatch_trial =
    "pooled from the ranges of a published swatch trial: seven yarns, five to seven knitters each";

inline constexpr Constant rest_differs{
    "gauge of the work against its swatch", 0.025, 0.015, 0.04, "relative", Mark::judgement, ""};
inline constexpr Constant other_fabric{"stitches of a fabric against stocking stitch",
                                       0.04,
                                       0.02,
                                       0.08,
                                       "relative",
                                       Mark::judgement,
                                       "in reading a swatch that is not in stocking stitch"};
inline constexpr Constant washing_moves{
    "a count moved by washing",
    0.05,
    0.04,
    0.08,
    "relative",
    Mark::judgement,
    "the largest single changes of six published swatches were 5.3 to 8.3 %"};
inline constexpr Constant area_reading{"reading a swatch's side", 0.002, 0.001, 0.004, "m",
                                       Mark::judgement,           ""};
inline constexpr Constant swatch_and_rest{"metres per area of the work against its weighed swatch",
                                          0.02,
                                          0.01,
                                          0.04,
                                          "relative",
                                          Mark::judgement,
                                          ""};
inline constexpr Constant swatch_metres{"metres per area of a weighed swatch",
                                        0.03,
                                        0.02,
                                        0.05,
                                        "relative",
                                        Mark::judgement,
                                        "mass and area of a swatch, and how the rest will differ"};
inline constexpr Constant rated_look{
    "a look rated on a swatch", 0.08, 0.05, 0.15, "of 1", Mark::judgement, ""};
inline constexpr Constant rows_between_knitters{"rows for their stitches, between knitters",
                                                0.076,
                                                0.046,
                                                0.106,
                                                "relative",
                                                Mark::derived,
                                                swatch_trial};
inline constexpr Constant worth_questioning{
    "surprise that is questioned", 2.5, 2, 3, "standard deviations", Mark::judgement, ""};
inline constexpr Constant most_rows{"rows that a piece may come to, by those planned",
                                    1.25,
                                    1.1,
                                    1.5,
                                    "relative",
                                    Mark::judgement,
                                    "another row gauge than the table's, and a few for luck"};
inline constexpr Constant as_it_goes{
    "evenness of the work between weighings",      0.012, 0.01, 0.02, "relative", Mark::judgement,
    "beside the scale's own error and the grist's"};
inline constexpr Constant habit_between_people{
    "gauge habit between people", 0.070, 0.049, 0.101, "relative", Mark::derived, swatch_trial};
inline constexpr Constant look_between_batches{
    "looks of one person's batches made up alike", 0.06, 0.04, 0.10, "of 1", Mark::judgement, ""};
inline constexpr Constant read_error{
    "reading both ends of a count to half a stitch",
    0.204,
    0.1,
    0.35,
    "stitches",
    Mark::derived,
    "sqrt(2) x 0.25 / sqrt(3): two rectangular readings (GUM 4.3.7)"};
inline constexpr Constant mark_error{
    "reading one mark on the cloth", 0.0005, 0.0002, 0.001, "m", Mark::judgement, ""};
inline constexpr Constant unevenness{"variation between neighbouring stitches or picks of handspun",
                                     0.06,
                                     0.03,
                                     0.10,
                                     "relative",
                                     Mark::judgement,
                                     ""};
inline constexpr Constant sample_edges{
    "cast-on, bind-off and tails of a swatch", 1.5, 1.0, 2.5, "m", Mark::judgement, ""};
inline constexpr Constant least_sample{"smallest sample worth counting",
                                       0.10,
                                       0.08,
                                       0.12,
                                       "m",
                                       Mark::common_practice,
                                       "at least 10 cm"};
inline constexpr Constant lace_from{
    "thickest laceweight", 7, 6, 8, "m/g", Mark::memory, "laceweight is spun at 8 to 12 m/g"};
inline constexpr Constant lace_to{"finest laceweight",         16, 14, 20, "m/g", Mark::memory,
                                  "cobweb is 14 m/g and finer"};
inline constexpr Constant thickest_spun{
    "thickest of the thickest class, of its finest", 0.5, 0.4, 0.7, "1", Mark::judgement, ""};
inline constexpr Constant good_enough{
    "error of a sample beyond which its metres are better used elsewhere",
    0.015,
    0.01,
    0.02,
    "relative",
    Mark::judgement,
    ""};
inline constexpr Constant counted_over{"share of a sample's side that is counted over",
                                       0.8,
                                       0.7,
                                       0.9,
                                       "of its side",
                                       Mark::judgement,
                                       "edges are not counted"};
inline constexpr Constant swatch_scale{
    "step of the scale a swatch is weighed on, when it is not said",
    0.1,
    0.01,
    1,
    "g",
    Mark::judgement,
    ""};
inline constexpr Constant spun_grist{
    "margin of a grist that is aimed for", 0.03, 0.02, 0.05, "relative", Mark::judgement, ""};

inline constexpr Constant least_in_a_stitch{
    "least yarn in a stitch beside what its cloth takes",
    0.67,
    0.60,
    0.75,
    "relative",
    Mark::derived,
    "a relaxed loop is 2.4 times the stitch's width and height together; up, across and down in "
    "straight lines is 1.4 times, and cloth pinned out hard comes to 1.6"};

}  // namespace gristwright::constants
