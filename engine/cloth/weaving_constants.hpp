// The figures behind woven cloth: each with its range, unit, mark and source, and each in this one
// place.
#pragma once

#include <array>

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr Constant crimp_factor{
    "crimp per squared sett x diameter",     9.0 / 16, 0.5, 0.62, "1", Mark::derived,
    "Peirce 1937, as read in teaching notes"};

// What washing takes of cloth off the loom, by what it is made of. `hair`, by finish in the order
// of Finish; `still` is plant fibre, silk and man-made fibre, which relax and do not full.
struct WashingConstants {
    Constant width, length;
};

inline constexpr std::string_view pieces_washed =
    "published pieces measured before and after washing (finished_pieces.csv)";
inline constexpr std::string_view wool_washed =
    "the same, and weavers' records; most state only reed to washed, 13 to 26 %";

inline constexpr Constant draw_in_the_loom{
    "width from the reed to off the loom",
    0.095,
    0.06,
    0.12,
    "of the reed",
    Mark::derived,
    "three published cloths (8.2, 9.6, 11.5 %) and a weaver's record (8.3 %)"};
inline constexpr std::array washed_hair{
    WashingConstants{{"width lost by wool washed lightly", 0.115, 0.06, 0.16, "off the loom",
                      Mark::derived, wool_washed},
                     {"length lost by wool washed lightly", 0.10, 0.05, 0.15, "off the loom",
                      Mark::derived, "7 % by hand, 13 % after a machine (a weaver's sample)"}},
    WashingConstants{{"width lost by wool set open, or fulled", 0.16, 0.08, 0.24, "off the loom",
                      Mark::derived, wool_washed},
                     {"length lost by wool set open, or fulled", 0.17, 0.09, 0.26, "off the loom",
                      Mark::derived, "14.5 to 26 % in published pieces"}},
    WashingConstants{
        {"width lost by wool fulled hard", 0.34, 0.25, 0.45, "off the loom", Mark::judgement,
         "one record of 35 %; an open mohair felted on purpose went far beyond"},
        {"length lost by wool fulled hard", 0.19, 0.13, 0.28, "off the loom", Mark::judgement,
         "one record of 14.5 %"}},
};
inline constexpr WashingConstants washed_still{
    {"width lost by cotton", 0.075, 0.02, 0.12, "off the loom", Mark::derived,
     "2 to 11 %, seven published cloths; from the reed 10 to 21, in the middle 16"},
    {"length lost by cotton", 0.056, 0.034, 0.15, "off the loom", Mark::derived, pieces_washed}};
inline constexpr Constant close_cloth_loses{
    "losses of a cloth whose one system hides the other",
    0.5,
    0.3,
    0.8,
    "of a balanced cloth's",
    Mark::judgement,
    "the closer the sett, the less a wool sample fulled (a weaver's samples)"};

inline constexpr Constant before_sample{"metres of weaving before any sample, besides the losses",
                                        0.06,
                                        0.04,
                                        0.10,
                                        "relative",
                                        Mark::judgement,
                                        "sett and beat as planned, joins"};
inline constexpr Constant after_sample{
    "metres of weaving after a washed sample", 0.04, 0.03, 0.06, "relative", Mark::judgement, ""};
inline constexpr Constant hole_share{"width of a rigid heddle's hole, not measured",
                                     0.45,
                                     0.35,
                                     0.55,
                                     "of the space between ends",
                                     Mark::judgement,
                                     "no maker's figure was found: measure your own"};
inline constexpr Constant narrowest_hole{
    "narrowest hole of a heddle", 0.3, 0.3, 0.6, "mm", Mark::judgement, ""};
inline constexpr Constant widest_hole{"widest hole of a heddle", 10, 3, 10, "mm",
                                      Mark::judgement,           ""};
inline constexpr Constant open_share{
    "share of the greatest sett, open cloth", 0.55, 0.50, 0.60, "1", Mark::common_practice, ""};
inline constexpr Constant scarf_share{"share of the greatest sett, scarves and shawls",
                                      0.65,
                                      0.60,
                                      0.70,
                                      "1",
                                      Mark::common_practice,
                                      ""};
inline constexpr Constant general_share{"share of the greatest sett, general cloth",
                                        0.775,
                                        0.75,
                                        0.80,
                                        "1",
                                        Mark::cited,
                                        "P. Osterkamp 2011: 80 %; a note of 1999 on Ashenhurst's "
                                        "rule: three quarters or slightly more"};
inline constexpr Constant firm_share{"share of the greatest sett, firm cloth",
                                     0.85,
                                     0.80,
                                     0.90,
                                     "1",
                                     Mark::judgement,
                                     "between general cloth and the 85 to 100 % of upholstery"};
inline constexpr Constant share_slack{"a sett outside its purpose's band that is still near",
                                      0.10,
                                      0.05,
                                      0.15,
                                      "of the greatest sett",
                                      Mark::judgement,
                                      ""};
inline constexpr Constant same_sett{"setts that are one, however they were typed",
                                    0.005,
                                    0.001,
                                    0.01,
                                    "of the sett",
                                    Mark::judgement,
                                    "32/10 cm is 8.1 to the inch"};
inline constexpr Constant most_take_up{
    "greatest take-up that is reckoned with", 0.25, 0.20, 0.25, "relative", Mark::derived,
    "Peirce's jammed plain cloth has 0.21"};

inline constexpr Constant long_float{
    "a float in woven cloth that catches in use",
    10,
    8,
    15,
    "mm",
    Mark::common_practice,
    "a handbook of 2015 calls floats of three ends generally safe"};

}  // namespace gristwright::constants
