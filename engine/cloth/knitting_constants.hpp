// The figures behind knitted cloth: each with its range, unit, mark and source, and each in this
// one place.
#pragma once

#include <array>

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr std::string_view munden = "Munden 1959; Knapton et al. 1968 (plain wool)";

// Of plain wool: w = kw / l and c = kc / l, in the order of Relaxation.
struct LoopConstants {
    Constant kw, kc;
};

inline constexpr std::array loop_constants{
    LoopConstants{{"kw, dry-relaxed", 3.8, 3.7, 3.9, "1", Mark::memory, munden},
                  {"kc, dry-relaxed", 5.0, 4.8, 5.2, "1", Mark::memory, munden}},
    LoopConstants{{"kw, wet-relaxed", 4.1, 4.0, 4.2, "1", Mark::memory, munden},
                  {"kc, wet-relaxed", 5.3, 5.1, 5.5, "1", Mark::memory, munden}},
    LoopConstants{{"kw, fully relaxed", 4.2, 4.1, 4.3, "1", Mark::memory, munden},
                  {"kc, fully relaxed", 5.5, 5.3, 5.7, "1", Mark::memory, munden}},
};

inline constexpr std::string_view needle_fit =
    "least squares on the trade's weight table, rows 0 to 5";
inline constexpr Constant ordinary_tightness{
    "tightness of ordinary hand knitting",
    1.05,
    0.95,
    1.15,
    "sqrt(tex)/mm",
    Mark::derived,
    "the trade's weight table (gauge against yards per pound), classes 1 to 5"};
inline constexpr Constant fine_from{"grist from which plain knitting is worked looser",
                                    4.4,
                                    4.0,
                                    5.0,
                                    "m/g",
                                    Mark::derived,
                                    "the trade's weight table: its lace row has 33 to 40 stitches "
                                    "from 4.8 m/g up, where one tightness would have 30 to 60"};
inline constexpr Constant fine_eases{"power of the grist by which it does",
                                     0.25,
                                     0.20,
                                     0.30,
                                     "1",
                                     Mark::derived,
                                     "the same row: 35 stitches at 9 m/g, 40 at 15 m/g"};
inline constexpr Constant coarse_from{
    "grist up to which plain knitting is worked looser",    1.8, 1.6, 2.0, "m/g", Mark::derived,
    "the same table, from its medium row to its bulky ones"};
inline constexpr Constant coarse_eases{
    "power of the grist by which thick yarn is",
    0.08,
    0.05,
    0.12,
    "1",
    Mark::derived,
    "the same table: 12 to 15 stitches at 1 m/g, 7 to 11 below 0.8 m/g"};
inline constexpr Constant rows_to_stitches{
    "rows to stitches of hand-knitted stocking stitch",
    1.37,
    1.30,
    1.43,
    "1",
    Mark::derived,
    "nine published gauges, a series counted once, have 1.40 in the median and seven soaked "
    "swatches 1.35"};
inline constexpr Constant tightest{
    "tightness beyond which stitches jam",       1.6, 1.5, 1.7, "sqrt(tex)/mm", Mark::judgement,
    "machine plain is published from 1.3 to 1.5"};
inline constexpr Constant wraps_to_stitches{
    "stitches per laid wrap, ordinary cloth",
    0.43,
    0.40,
    0.45,
    "1",
    Mark::derived,
    "the trade's weight table (gauge against wraps), wool of usual loft"};
inline constexpr Constant wraps_rule_from{"wraps that still tell the gauge, from",
                                          7,
                                          6,
                                          8,
                                          "wraps per inch",
                                          Mark::derived,
                                          "the same table: 0.26 stitches per wrap in its lace row"};
inline constexpr Constant wraps_rule_to{"wraps that still tell the gauge, to",
                                        18,
                                        16,
                                        20,
                                        "wraps per inch",
                                        Mark::derived,
                                        "the same table: 0.26 stitches per wrap in its lace row"};
inline constexpr Constant wraps_fade{"doubt of the gauge by wraps beyond those, in ln wraps",
                                     2.0,
                                     1.0,
                                     3.0,
                                     "1",
                                     Mark::judgement,
                                     "so that the wraps lose their say by degrees"};
inline constexpr Constant between_knitters{
    "gauge between knitters, same yarn and needle",
    0.070,
    0.049,
    0.101,
    "relative",
    Mark::derived,
    "pooled from the ranges of a published swatch trial, seven yarns, five to seven knitters each"};
inline constexpr Constant needle_slope{
    "needle per loop length", 0.2405, 0.23, 0.25, "mm/mm", Mark::derived, needle_fit};
inline constexpr Constant needle_offset{"needle at no loop", -0.724,    -1.0, -0.4, "mm",
                                        Mark::derived,       needle_fit};
inline constexpr Constant same_needle{"needles so near are one",
                                      0.05,
                                      0.04,
                                      0.06,
                                      "relative",
                                      Mark::judgement,
                                      "sizes are sold 6 to 13 % apart: half a step"};
inline constexpr Constant needle_to_gauge{
    "gauge of one needle about the line",
    0.05,
    0.03,
    0.08,
    "relative",
    Mark::judgement,
    "looked at beside published stocking stitch and garter on 2.25 to 9 mm"};

// What a purpose asks of the needle: so many times the needle of ordinary stocking stitch in the
// same yarn, but never finer than `least` at 4 m/g, going with the grist to the power of
// least_falls: shawls and lace are knitted on much the same needles in any fine yarn. `freedom` is
// how far a knitter departs from it and still serves the purpose; `blocked` the area of plain cloth
// pinned out for it against the same cloth washed and left to itself. In the order of Firmness.
struct PurposeConstants {
    Constant to_ordinary, least, freedom, blocked;
};

inline constexpr std::string_view needles_met =
    "set by hand beside the needles of published shawls, scarves and haps, 1.6 to 10 m/g";
inline constexpr std::string_view no_least = "no least size: the yarn alone decides";

inline constexpr std::array purpose_constants{
    PurposeConstants{
        {"needle for lace", 1.25, 1.1, 1.5, "of ordinary", Mark::judgement, needles_met},
        {"needle for lace, least", 4.3, 3.5, 5.0, "mm at 4 m/g", Mark::judgement, needles_met},
        {"needle for lace, freedom", 0.20, 0.15, 0.25, "relative", Mark::judgement, needles_met},
        {"plain cloth blocked as lace", 1.20, 1.00, 1.45, "of its area", Mark::judgement,
         "lace with its holes grows 1.3 to 2.25 in published shawls"}},
    PurposeConstants{
        {"needle for drapey cloth", 1.08, 1.0, 1.3, "of ordinary", Mark::judgement, needles_met},
        {"needle for drapey cloth, least", 3.9, 3.5, 5.0, "mm at 4 m/g", Mark::judgement,
         needles_met},
        {"needle for drapey cloth, freedom", 0.15, 0.10, 0.20, "relative", Mark::judgement,
         needles_met},
        {"plain cloth laid out to drape", 1.03, 0.97, 1.12, "of its area", Mark::judgement, ""}},
    PurposeConstants{
        {"needle for ordinary cloth", 1, 1, 1, "of ordinary", Mark::derived, needle_fit},
        {"needle for ordinary cloth, least", 0, 0, 0, "mm at 4 m/g", Mark::judgement, no_least},
        {"needle for ordinary cloth, freedom", 0.12, 0.08, 0.15, "relative", Mark::derived,
         needle_fit},
        {"plain cloth blocked as ordinary", 1, 1, 1, "of its area", Mark::common_practice, ""}},
    PurposeConstants{
        {"needle for firm cloth", 0.85, 0.80, 0.90, "of ordinary", Mark::judgement,
         "one or two sizes finer"},
        {"needle for firm cloth, least", 0, 0, 0, "mm at 4 m/g", Mark::judgement, no_least},
        {"needle for firm cloth, freedom", 0.10, 0.08, 0.12, "relative", Mark::judgement, ""},
        {"plain cloth blocked as firm", 1, 1, 1, "of its area", Mark::common_practice, ""}},
    PurposeConstants{
        {"needle for socks", 0.80, 0.74, 0.88, "of ordinary", Mark::judgement,
         "beside the needles of published socks, 2.5 to 4.3 m/g: 2.25 to 3 mm"},
        {"needle for socks, least", 0, 0, 0, "mm at 4 m/g", Mark::judgement, no_least},
        {"needle for socks, freedom", 0.10, 0.08, 0.12, "relative", Mark::judgement, ""},
        {"plain cloth blocked as socks", 1, 1, 1, "of its area", Mark::common_practice, ""}},
};
inline constexpr Constant least_falls{"power of the grist in the least needle for lace and drape",
                                      -0.15,
                                      -0.30,
                                      0.10,
                                      "1",
                                      Mark::judgement,
                                      needles_met};

inline constexpr Constant needle_slack{"needle as good as the one wanted",
                                       0.35,
                                       0.25,
                                       0.5,
                                       "mm",
                                       Mark::judgement,
                                       "the step of sizes"};
inline constexpr Constant needle_slack_share{
    "and besides, of its size", 0.05, 0.03, 0.10, "relative", Mark::judgement, ""};

inline constexpr Constant needle_taken{
    "needle that people take, about the one wanted",
    0.13,
    0.06,
    0.19,
    "relative",
    Mark::derived,
    "45 needles that published pieces name: root mean square 0.14, nine in ten within 0.11; socks "
    "0.06, lace 0.16, drapey cloth 0.19 with one far off"};
inline constexpr Constant sock_needle_taken{
    "and for socks",
    0.07,
    0.05,
    0.13,
    "relative",
    Mark::derived,
    "four published pairs name needles within 0.06 of the one wanted: a sock must be firm and a "
    "foot has a size, so nobody strays far"};
inline constexpr Constant besides_gauge{
    "metres per area at a known gauge", 0.06, 0.04, 0.08, "relative", Mark::judgement,
    "loop shape, joins, tails"};
inline constexpr Constant swatch_gauge{
    "gauge counted on a washed swatch",          0.03, 0.014, 0.056, "relative", Mark::derived,
    "0.25 to 0.5 stitch over 4 in and over 1 in"};
inline constexpr Constant habit_carried{
    "gauge habit carried to another firmness", 0.05, 0.03, 0.08, "relative", Mark::judgement, ""};
inline constexpr Constant long_strand{"a strand behind two-colour knitting that wants catching",
                                      25,
                                      20,
                                      30,
                                      "mm",
                                      Mark::common_practice,
                                      ""};

inline constexpr Constant loosest_counted{
    "the loosest gauge that a swatch is believed, by the usual one for the grist",
    0.50,
    0.40,
    0.60,
    "ratio",
    Mark::judgement,
    "lace is knitted down to 0.6 of it"};
inline constexpr Constant tightest_counted{
    "the tightest gauge that a swatch is believed, by the usual one for the grist",
    1.60,
    1.50,
    1.80,
    "ratio",
    Mark::judgement,
    "socks are knitted up to 1.3 times it, by band 1.10 to 1.30 of a sock"};

}  // namespace gristwright::constants
