// What a yarn can be knitted at: a gauge far from it was counted over another width, or of another
// yarn.
#pragma once

#include <optional>

#include "engine/yarn/profile.hpp"

namespace gristwright {

struct FarGauge {
    Gauge counted, usual;  // stocking stitch
};

// A gauge of stocking stitch that can hardly be this yarn's, beside its usual one; none: it can.
std::optional<FarGauge> far_from_yarn(Gauge counted, const YarnProfile& yarn);

}  // namespace gristwright
