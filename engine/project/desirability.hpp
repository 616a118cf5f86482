// Desirability curves: how a measured value turns into 0 (useless) to 1 (all that was wished).
#pragma once

#include <algorithm>

namespace gristwright {

// More is better: 1 from `wanted` on, straight down to 0 at `wanted - reach`. reach > 0.
constexpr double desire_more(double had, double wanted, double reach) {
    return std::clamp(1 - (wanted - had) / reach, 0.0, 1.0);
}

// Inside [low, high] 1; straight down to 0 at low - tail and high + tail. tail > 0.
constexpr double desire_within(double value, double low, double high, double tail) {
    const double out = std::max({0.0, low - value, value - high});
    return std::clamp(1 - out / tail, 0.0, 1.0);
}

}  // namespace gristwright
