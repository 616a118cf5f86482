#include "engine/evidence/skein_ends.hpp"

namespace gristwright {

std::vector<SkeinEnd> skein_ends(const Plan& plan, const std::vector<Length>& skeins, double factor,
                                 Length used) {
    std::vector<SkeinEnd> out;
    const auto work = stretches(plan);
    Length end;
    for (std::size_t s = 0; s + 1 < skeins.size() && !work.empty(); ++s) {
        end += skeins[s];
        if (end <= used) continue;
        const auto planned = end * (1 / factor);
        if (planned >= work.back().ends) break;
        out.push_back({s, place_after(plan, work, planned)});
    }
    return out;
}

}  // namespace gristwright
