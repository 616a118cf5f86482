#include "engine/cloth/weaving.hpp"

#include "engine/cloth/constants.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr double share_slack = 0.10;  // a share this far outside the band is still near it

// Metric heddles first: 20 to 60 per 10 cm; then 5 to 15 per inch (common practice).
constexpr std::array usual_heddles{200.0, 300.0, 400.0, 500.0, 600.0};

// The sett whose share lies nearest the middle of the band; the first listed of two as near.
void choose_heddle(const std::vector<Sett>& owned, WovenCloth& cloth) {
    const double middle = (cloth.wanted.low + cloth.wanted.high) / 2;
    double best = INFINITY;
    const auto offer = [&](Sett heddle, int in_hole) {
        const double share = heddle * in_hole / cloth.greatest;
        if (std::abs(share - middle) >= best) return;
        best = std::abs(share - middle);
        cloth.heddle = heddle;
        cloth.in_hole = in_hole;
        cloth.ends = heddle * in_hole;
        cloth.share = share;
    };
    for (int in_hole = 1; in_hole <= cloth.weave->most_in_hole; ++in_hole) {
        for (const auto heddle : owned) offer(heddle, in_hole);
        if (owned.empty())
            for (const double sett : usual_heddles) offer(Sett::from_si(sett), in_hole);
    }
    cloth.within_reach = cloth.share >= cloth.wanted.low - share_slack &&
                         cloth.share <= cloth.wanted.high + share_slack;
}

void close_up(WovenCloth& cloth) {
    cloth.share = (cloth.wanted.low + cloth.wanted.high) / 2;
    cloth.ends = cloth.heddle = cloth.greatest * cloth.share;
}

}  // namespace

Sett greatest_sett(const Weave& weave, Length packed_diameter) {
    if (weave.sett > 0) return greatest_sett(packed_diameter, plain_weave) * weave.sett;
    return greatest_sett(packed_diameter, weave.interlacing);
}

bool draws_itself_in(const Weave& weave) { return weave.sett > 1 && weave.picks < 1; }

Length longest_float(const WovenCloth& cloth) {
    const double along = cloth.weave->warp_float * (1 - cloth.length.mid) / cloth.picks.si();
    const double across = cloth.weave->weft_float * (1 - cloth.width.mid) / cloth.ends.si();
    return Length::from_si(std::max(along, across));
}

WovenCloth weave_cloth(const YarnProfile& yarn, const Weave& weave, Spacing purpose, Finish finish,
                       const Equipment& owned) {
    WovenCloth cloth;
    cloth.weave = std::make_shared<const Weave>(weave);
    cloth.greatest = greatest_sett(weave, yarn.packed_diameter);
    cloth.wanted = share_band(purpose);
    if (draws_itself_in(weave))
        close_up(cloth);
    else
        choose_heddle(owned.heddles, cloth);
    cloth.picks = cloth.ends * weave.picks;
    cloth.shafts_enough = owned.shafts == 0 || owned.shafts >= weave.shafts;
    const auto hole = Length::from_si(hole_share / cloth.heddle.si() / cloth.in_hole);
    cloth.through_hole = draws_itself_in(weave) || yarn.packed_diameter * shed_room <= hole;
    // The system that is hidden lies nearly straight; the one that shows bends round it.
    const auto bent_round = std::min(cloth.ends, cloth.picks);
    const double crimp = weave.take_up * take_up(bent_round, yarn.packed_diameter);
    cloth.warp_take_up = cloth.weft_take_up = std::min(crimp, 0.25);
    cloth.width = width_loss(finish);
    cloth.length = length_loss(finish);
    if (const auto& kept = yarn.evidence.width_kept)
        cloth.width = {1 - kept->mid, 1 - kept->high(), 1 - kept->low()};
    if (const auto& kept = yarn.evidence.length_kept)
        cloth.length = {1 - kept->mid, 1 - kept->high(), 1 - kept->low()};
    cloth.spread = yarn.evidence.width_kept ? double{after_sample} : double{before_sample};
    return cloth;
}

}  // namespace gristwright
