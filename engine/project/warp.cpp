#include "engine/project/warp.hpp"

#include <algorithm>
#include <cmath>

#include "engine/project/constants.hpp"

namespace gristwright {

std::vector<WarpShare> share_warp(const std::vector<Length>& skeins, int ends, Length each) {
    std::vector<WarpShare> out;
    for (std::size_t s = 0; s < skeins.size() && ends > 0; ++s) {
        const int whole = static_cast<int>(std::floor(skeins[s] / each + 1e-9));
        const int taken = std::min(whole, ends);
        if (taken == 0) continue;
        out.push_back({s, taken, each * taken});
        ends -= taken;
    }
    return out;
}

Mass hung_on_an_end(LinearDensity grist) {
    return grams(std::clamp(constants::hung_per_tex * in_tex(grist), double{constants::least_hung},
                            double{constants::most_hung}));
}

}  // namespace gristwright
