// How much of a wrapped yarn is fibre and how much is air.
//
// Taking the yarn as a cylinder of diameter 1 / wraps: packing = linear density / (fibre density x
// cross-section). Specific volume is the yarn's own, air included: 1 / (fibre density x packing).
#pragma once

#include "engine/estimate/estimate.hpp"
#include "engine/units/quantity.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

// No round fibres lie closer than hexagonally: a packing above pi / sqrt(12) is an input error.
inline constexpr double closest_packing = 0.90689968;

constexpr Length diameter_from_wraps(Wraps wraps) { return Length::from_si(1 / wraps.si()); }
Length diameter_from_volume(LinearDensity d, double specific_volume_cm3_per_g);
double packing_from_wraps(LinearDensity d, Wraps wraps, Density fibre);
double specific_volume(LinearDensity d, Wraps wraps);  // cm3/g

// Margin of a wraps count: half a wrap over the ruler, and what differs between people.
double wraps_margin(const WrapsReading& reading);
// Margin of a packing: sqrt(u_tex^2 + (2 u_wraps)^2).
double packing_margin(double tex_margin, double wraps_margin);

// Ashenhurst's C for the packed, squeezed diameter: C sqrt(yd/lb) diameters to the inch.
enum class SpunAs { woollen, worsted };
double ashenhurst(SpunAs spun);
Length packed_diameter(LinearDensity d, double c);

// Packing usually seen in wool of this make-up, laid wraps; {0, 0} when either is unknown.
struct PackingBand {
    double low = 0, high = 0;
};
PackingBand usual_packing(Preparation preparation, Draw draw);

}  // namespace gristwright
