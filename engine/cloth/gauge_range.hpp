// What a yarn can be knitted at: a gauge far from it was counted over another width, or of another
// yarn.
#pragma once

#include <string>

#include "engine/yarn/profile.hpp"

namespace gristwright {

// Why that gauge of stocking stitch can hardly be this yarn's; empty: it can.
std::string far_from_yarn(Gauge counted, const YarnProfile& yarn);

}  // namespace gristwright
