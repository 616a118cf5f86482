// How thick a yarn is where cloth squeezes it: what setts are worked from.
//
// T. R. Ashenhurst: C sqrt(yd/lb) diameters to the inch (read in a note of 1999 and in Taylor). C
// goes by fibre and by how the yarn was spun; a count of wraps says whether this one is loftier
// than its kind, and cloth squeezes out a part of that.
#pragma once

#include "engine/units/quantity.hpp"
#include "engine/yarn/batch.hpp"

namespace gristwright {

// Share of the fibre, by mass, that is wool or other hair; of fibre not given, all.
double share_of_hair(const Batch& batch);

// C of this fibre and make, before any wraps.
double usual_close_packing(const Batch& batch);

// With counted wraps: laid ones move C by a part of the loft that they show, packed ones are the
// squeezed yarn itself. Never beyond what any yarn has.
double close_packing(const Batch& batch, LinearDensity grist);

// Half of the laid wraps, as many weavers set plain weave; blind to grist, made for yarn of usual
// loft (A. King; M. Stearn 2017: 20 wraps to a heddle of 10).
constexpr Sett half_the_wraps(Wraps laid) { return Sett::from_si(laid.si() / 2); }

}  // namespace gristwright
