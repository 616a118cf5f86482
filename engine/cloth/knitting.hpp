// Knitted cloth from yarn: loop, gauge, tightness, needle, metres and mass per area.
#pragma once

#include <string>
#include <vector>

#include "engine/estimate/constant.hpp"
#include "engine/estimate/estimate.hpp"
#include "engine/yarn/profile.hpp"

namespace gristwright {

// Munden's relaxation states of plain wool knitting.
enum class Relaxation { dry, wet, full };

// w = kw / l, c = kc / l. Loop length l of one stitch. All per Munden 1959 (from memory), see .cpp.
Length loop_from_stitches(Gauge stitches, Relaxation state);
Gauge stitches_from_loop(Length loop, Relaxation state);
Gauge rows_from_loop(Length loop, Relaxation state);
double tightness(LinearDensity d, Length loop);                      // K = sqrt(tex) / l(mm)
LengthPerArea plain_metres_per_area(Length loop, Relaxation state);  // ks / l
Length needle_for(Length loop);  // fitted to the trade's weight table

// How firm a purpose wants the cloth. Bands of K in models.md section 2 (judgement).
enum class Firmness { lace, drapey, ordinary, firm, sock };
struct TightnessBand {
    double low, high;
};
TightnessBand tightness_band(Firmness purpose);

// Stocking-stitch gauge for a purpose by grist (K) and by wraps (0.43 x WPI), and both weighed.
struct GaugeGuess {
    Estimate<Gauge> by_grist;
    Estimate<Gauge> by_wraps;  // mid 0 when no wraps were measured
    Estimate<Gauge> both;
};
GaugeGuess guess_gauge(const YarnProfile& yarn, Firmness purpose);

// A knitted fabric: a row of catalog/tables/knit_fabrics.csv.
struct KnitFabric {
    std::string name;  // "stocking stitch", "garter", "1x1 rib", "cables", "eyelet lace", ...
    double metres_factor =
        1;  // metres per (relaxed, unblocked) area against stocking stitch, same stitch gauge
    double metres_low = 1, metres_high = 1;
    double width_factor = 1;  // width of n stitches against stocking stitch, relaxed
    double rows_factor = 1;   // rows per length against stocking stitch
    double block_growth = 1;  // area after blocking / area off the needles (1: not stretched)
    double block_low = 1, block_high = 1;
    int stitch_repeat = 1, row_repeat = 2;
    double definition = 0;     // how much stitch definition it asks for, 0..1
    double openness = 0;       // 0 dense .. 1 open: how much less warmth and cover
    bool loose_loops = false;  // eyelets or floats that small fingers catch in
    Mark mark = Mark::judgement;
    std::string source;
};

struct KnitCloth {
    std::string fabric;
    Firmness purpose = Firmness::ordinary;
    GaugeGuess guess;
    Gauge stocking_gauge;  // planned stocking-stitch gauge
    Gauge stitches, rows;  // planned, in the fabric as finished (washed, blocked)
    Length loop;
    double tightness = 0;
    Length needle;  // nearest owned or standard size
    bool needle_owned = true;
    Estimate<LengthPerArea> metres_per_area;  // of finished cloth
    ArealDensity mass_per_area;
    double cover = 0;  // tightness over the middle of the ordinary band; 1: ordinary cover
};

// `gauge` overrides the guess when the person gives a measured stocking-stitch gauge (spread 0:
// unknown margin, 0.03 is taken).
KnitCloth knit_cloth(const YarnProfile& yarn, const KnitFabric& fabric, Firmness purpose,
                     const std::vector<Length>& needles);

}  // namespace gristwright
