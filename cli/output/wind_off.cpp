#include "cli/output/wind_off.hpp"

#include "cli/output/ball_ladder.hpp"
#include "cli/output/describe.hpp"
#include "engine/evidence/skein_ends.hpp"

namespace gristwright::cli {

std::vector<FromSkein> wind_off(const Plan& plan, const YarnProfile& yarn) {
    std::vector<FromSkein> out;
    const auto lengths = lengths_of(yarn);
    const auto from = taken(lengths, taking_for(yarn.agreement), set_aside_for(plan)).of_each;
    for (std::size_t s = 0; s < lengths.size(); ++s)
        if (from[s].si() > 0) out.push_back({s, from[s], lengths[s] - from[s]});
    return out;
}

}  // namespace gristwright::cli
