#include "cli/output/wind_off.hpp"

#include <algorithm>

#include "cli/output/ball_ladder.hpp"

namespace gristwright::cli {

std::vector<FromSkein> wind_off(const Plan& plan, const YarnProfile& yarn) {
    std::vector<FromSkein> out;
    auto wanted = set_aside_for(plan);
    for (std::size_t s = 0; s < yarn.skeins.size() && wanted.si() > 0; ++s) {
        const auto takes = std::min(wanted, yarn.skeins[s].length);
        out.push_back({s, takes, yarn.skeins[s].length - takes});
        wanted -= takes;
    }
    return out;
}

}  // namespace gristwright::cli
