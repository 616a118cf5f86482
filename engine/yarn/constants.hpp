// The figures behind yarn: each with its range, unit, mark and source, and each in this one place.
#pragma once

#include <array>

#include "engine/estimate/constant.hpp"

namespace gristwright::constants {

inline constexpr std::string_view handspun = "published handspun skeins (laid wraps), small number";
inline constexpr Constant washed_from_reel{
    "washed length of a skein measured on the reel",
    0.86,
    0.74,
    1.0,
    "of it",
    Mark::judgement,
    "one published skein kept 0.72; most lose less, and none grows"};
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
    "packing of combed short-draw wool", 0.15, 0.10, 0.22, "1", Mark::derived, handspun};
inline constexpr Constant carded_packing{
    "packing of carded long-draw wool", 0.11, 0.07, 0.15, "1", Mark::derived, handspun};
inline constexpr std::string_view by_ashenhurst =
    "a note of 1999 on Ashenhurst's formula; the range is ours";
inline constexpr Constant worsted_c{
    "Ashenhurst's C, worsted", 0.90, 0.88, 0.92, "1", Mark::read, by_ashenhurst};
inline constexpr Constant woollen_c{
    "Ashenhurst's C, woollen", 0.84, 0.82, 0.86, "1", Mark::read, by_ashenhurst};

// Of yarn by fibre and make: Ashenhurst's C, and the packing usually seen in its laid wraps.
struct KindConstants {
    Constant c, packing;
};
inline constexpr KindConstants worsted_spun{worsted_c, combed_packing};
inline constexpr KindConstants woollen_spun{woollen_c, carded_packing};
inline constexpr KindConstants cotton_spun{
    {"C of cotton", 0.92, 0.90, 0.95, "1", Mark::derived,
     "0.95 in Taylor, Cotton Weaving and Designing; 0.90 in a note of 1999"},
    {"packing of cotton", 0.17, 0.12, 0.24, "1", Mark::derived, handspun}};
inline constexpr KindConstants bast_spun{
    {"C of linen and other bast", 0.92, 0.88, 0.96, "1", Mark::judgement, "as cotton"},
    {"packing of linen", 0.20, 0.18, 0.22, "1", Mark::derived, handspun}};
inline constexpr KindConstants silk_spun{
    {"C of silk", 0.92, 0.88, 0.97, "1", Mark::judgement, "as cotton"},
    {"packing of silk", 0.20, 0.18, 0.22, "1", Mark::derived, handspun}};
inline constexpr KindConstants made_fibre_spun{
    {"C of man-made staple", 0.90, 0.84, 0.95, "1", Mark::judgement, "as worsted"},
    {"packing of man-made staple", 0.15, 0.10, 0.22, "1", Mark::judgement, ""}};
inline constexpr Constant loft_in_cloth{
    "part of a yarn's loft that cloth leaves it",
    0.5,
    0.28,
    1.0,
    "power of its width",
    Mark::judgement,
    "0.28 brings Ashenhurst's woollen from his worsted; 1 is half the wraps; a weaver's sample "
    "of lofty woollen lies between"};
inline constexpr Constant any_c{
    "C of any yarn", 0.84, 0.60, 0.98, "1", Mark::judgement, "its range bounds what wraps may say"};
inline constexpr Constant between_people{
    "wraps counted by another person", 0.07, 0.05, 0.10, "relative", Mark::judgement, ""};
inline constexpr Constant prickling{"fibre that prickles",  30.5, 30, 31, "micron", Mark::read,
                                    "Riverina Wool Testers"};
inline constexpr Constant variation{"coefficient of variation of fibre diameter",
                                    0.22,
                                    0.15,
                                    0.30,
                                    "relative",
                                    Mark::judgement,
                                    "the range is that of Riverina Wool Testers, the middle ours"};
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
inline constexpr Constant not_counted{"part of what a fibre leaves open that is not counted on",
                                      0.8,
                                      0.5,
                                      1.0,
                                      "deviations",
                                      Mark::judgement,
                                      "a fibre that is not known is never taken as middling soft"};
inline constexpr Constant finest_wool{
    "wool that springs most", 20, 17, 22, "micron", Mark::judgement, "crimp falls with diameter"};
inline constexpr Constant coarsest_wool{
    "wool that springs least", 35, 32, 40, "micron", Mark::judgement, "crimp falls with diameter"};
inline constexpr Constant wear_at_19{
    "wear of a wool of 19 micron", 0.30, 0.25, 0.40, "of 1", Mark::judgement, ""};
inline constexpr Constant wear_per_micron{
    "wear for each micron more",        0.018, 0.01, 0.025, "of 1 per micron", Mark::judgement,
    "finer wool wears and pills sooner"};
inline constexpr Constant softest_micron{"wool as soft as any", 15, 14, 17, "micron",
                                         Mark::judgement,       ""};
inline constexpr Constant softness_span{"from the softest wool to none of it",
                                        25,
                                        22,
                                        28,
                                        "micron",
                                        Mark::judgement,
                                        "40 micron is carpet wool"};
inline constexpr Constant crisp_from{
    "wool that is not crisp at all", 18, 16, 20, "micron", Mark::judgement, ""};
inline constexpr Constant crisp_span{
    "from there to the crispest", 30, 25, 35, "micron", Mark::judgement, ""};
inline constexpr Constant felt_share{
    "share of a rough fibre that skin feels",
    0.05,
    0.03,
    0.08,
    "of the mass",
    Mark::read,
    "Riverina Wool Testers: prickle is felt above about 5 %; the range is ours"};
inline constexpr Constant strong_wear{
    "wear of a fibre that reinforces", 0.70, 0.65, 0.80, "of 1", Mark::judgement, ""};
inline constexpr Constant reinforcing_share{
    "share of nylon that reinforces in full",
    0.22,
    0.10,
    0.25,
    "of the mass",
    Mark::judgement,
    "mills and makers spin sock yarn with 10 to 25 %; no dose curve was found"};
inline constexpr Constant reinforcement{
    "wear that reinforcing adds beyond its share",
    0.10,
    0.05,
    0.15,
    "of 1",
    Mark::judgement,
    "polyamide raises the abrasion resistance of socks (Ozdil 2009, read in an abstract); the size "
    "is ours"};

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
inline constexpr Constant alike_wraps{
    "wraps of skeins that are one yarn, the more by the fewer",
    1.20,
    1.15,
    1.25,
    "ratio",
    Mark::judgement,
    "one person counts a yarn again within a wrap or two of 12; a fifth is another loft"};
inline constexpr Constant consistent_grist{"spread of a consistent spinner's skeins",
                                           0.06,
                                           0.05,
                                           0.06,
                                           "relative",
                                           Mark::cited,
                                           "a norm for hand-spun cotton; a spinner's own record "
                                           "of 5 %"};
// A wool of which nothing is known, by Behaviour: each taken as wide as its range, which is that of
// the breeds of the fibre table.
inline constexpr std::array<Constant, 10> any_wool{{
    {"spring of any wool", 0.62, 0.35, 0.89, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"strength of any wool", 0.22, 0.22, 0.22, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"wear of any wool", 0.575, 0.32, 0.83, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"warmth of any wool", 0.575, 0.5, 0.65, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"felting of any wool", 0.55, 0.2, 0.9, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"absorbency of any wool", 0.25, 0.25, 0.25, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"halo of any wool", 0.325, 0.15, 0.5, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"softness of any wool", 0.41, 0, 0.82, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"crispness of any wool", 0.45, 0.05, 0.85, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
    {"heat safety of any wool", 0.9, 0.9, 0.9, "of 1", Mark::judgement,
     "the breeds of the fibre table"},
}};
inline constexpr Constant finest_spring{
    "spring of the wool that springs most", 0.8, 0.75, 0.85, "of 1", Mark::judgement, ""};
inline constexpr Constant spring_lost{
    "spring lost from there to the coarsest", 0.35, 0.3, 0.4, "of 1", Mark::judgement, ""};
inline constexpr Constant finest_warmth{"warmth of a fine wool", 0.61, 0.55, 0.65, "of 1",
                                        Mark::judgement,         ""};
inline constexpr Constant warmth_lost{
    "warmth lost from there to the coarsest", 0.08, 0.05, 0.1, "of 1", Mark::judgement, ""};
inline constexpr Constant finest_halo{"halo of a fine wool", 0.15, 0.1, 0.2, "of 1",
                                      Mark::judgement,       ""};
inline constexpr Constant halo_gained{
    "halo gained from there to the coarsest", 0.15, 0.1, 0.35, "of 1", Mark::judgement, ""};
inline constexpr Constant wool_density{"density of wool and of what is not known",
                                       1.31,
                                       1.3,
                                       1.32,
                                       "g/cm3",
                                       Mark::memory,
                                       "Morton and Hearle, Physical Properties of Textile Fibres"};
inline constexpr Constant silk_density{"density of silk",
                                       1.34,
                                       1.25,
                                       1.37,
                                       "g/cm3",
                                       Mark::memory,
                                       "Morton and Hearle, Physical Properties of Textile Fibres"};
inline constexpr Constant cotton_density{
    "density of seed hairs",
    1.52,
    1.5,
    1.55,
    "g/cm3",
    Mark::memory,
    "Morton and Hearle, Physical Properties of Textile Fibres"};
inline constexpr Constant bast_density{"density of other plant fibres",
                                       1.5,
                                       1.48,
                                       1.54,
                                       "g/cm3",
                                       Mark::memory,
                                       "Morton and Hearle, Physical Properties of Textile Fibres"};
inline constexpr Constant viscose_density{
    "density of regenerated cellulose",
    1.49,
    1.48,
    1.52,
    "g/cm3",
    Mark::cited,
    "at 65 % humidity, as the row of viscose has it; 1.52 is of dry fibre"};
inline constexpr Constant nylon_density{
    "density of synthetic fibres", 1.14, 1.14, 1.38, "g/cm3", Mark::memory,
    "nylon; polyester 1.38"};
inline constexpr Constant loop_margin{
    "margin of a reel's or niddy-noddy's loop", 0.01, 0.005, 0.03, "relative", Mark::judgement,
    "where a length comes by its turns"};
inline constexpr Constant likely_packing_most{
    "packing above which laid wraps are questioned",    0.45, 0.4, 0.5, "1", Mark::judgement,
    "the wraps were packed tight, or a length is wrong"};
inline constexpr Constant likely_packing_least{
    "packing below which laid wraps are questioned", 0.02, 0.02, 0.04, "1", Mark::judgement, ""};
inline constexpr Constant trait_worth_saying{
    "a trait moved by so much is told", 0.03, 0.02, 0.05, "of 1", Mark::judgement, ""};
inline constexpr Constant gauges_apart{"gauges by wraps and by grist that are told apart",
                                       0.08,
                                       0.05,
                                       0.1,
                                       "relative",
                                       Mark::judgement,
                                       ""};
inline constexpr Constant scale_matters{"margin of the mass that is worth a finer scale",
                                        0.01,
                                        0.005,
                                        0.02,
                                        "relative",
                                        Mark::judgement,
                                        ""};

}  // namespace gristwright::constants
