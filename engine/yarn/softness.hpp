// Next to the skin: the share of fibres thick enough to prickle.
#pragma once

#include "engine/units/quantity.hpp"

namespace gristwright {

// Share (0..1) of fibres over 30.5 micron, diameters taken as normal. Prickle is felt above about
// 5 %. `deviation` 0 takes the usual coefficient of variation, 22 % (15-30 % are met).
// Source: Riverina Wool Testers; checked against published fleece tests.
double share_over_prickle(Length mean, Length deviation = {});

}  // namespace gristwright
