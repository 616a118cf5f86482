// Plain knitted cloth from its loop: gauge, tightness, metres and mass per area, needle.
//
// With w stitches and c rows per length and l the yarn in one stitch, w = kw / l, c = kc / l and
// the loops per area are ks / l^2; kw, kc, ks depend only on how far the cloth has relaxed.
#pragma once

#include "engine/estimate/estimate.hpp"
#include "engine/units/quantity.hpp"

namespace gristwright {

// dry: rested off the needles; wet: soaked and dried flat; full: washed with agitation.
enum class Relaxation { dry, wet, full };

Length loop_from_stitches(Gauge stitches, Relaxation state);
Gauge stitches_from_loop(Length loop, Relaxation state);
Gauge rows_from_loop(Length loop, Relaxation state);
LengthPerArea plain_metres_per_area(Length loop, Relaxation state);

// K = sqrt(tex) / l(mm): the higher, the firmer the cloth of a given yarn.
double tightness(LinearDensity d, Length loop);
Length loop_for_tightness(LinearDensity d, double k);

// Rows of hand-knitted stocking stitch of that gauge, soaked and dried flat: hands pack their rows
// a little closer than the machine plain of the loop constants.
Gauge rows_by_hand(Gauge stitches);

// What cloth is knitted for. It decides the needle (engine/cloth/needle.hpp).
enum class Firmness { lace, drapey, ordinary, firm, sock };
struct TightnessBand {
    double low = 0, high = 0;
    double middle() const { return (low + high) / 2; }
};

// K of ordinary stocking stitch: one figure for most yarns, less at both ends of the scale, where
// nobody knits plain as densely as the thickness would allow.
double usual_tightness(LinearDensity d);

// Ordinary stocking stitch, washed, without a swatch: from the grist through K, and from the wraps.
// The spread is of the reading alone: the knitter's own, the same in both, is added once, after.
Estimate<Gauge> gauge_by_grist(LinearDensity d);
Estimate<Gauge> gauge_by_wraps(Wraps laid, double wraps_spread);

}  // namespace gristwright
