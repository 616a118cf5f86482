#include "engine/cloth/weaving.hpp"

#include "engine/cloth/weaving_constants.hpp"

#include <algorithm>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

double middle_of(ShareBand band) { return (band.low + band.high) / 2; }

bool near(double share, ShareBand wanted) {
    return share >= wanted.low - share_slack && share <= wanted.high + share_slack;
}

// A weave that hides its warp: few ends, many picks.
bool hides_warp(const Weave& weave) {
    return weave.sett > 0 && weave.sett < 1 && weave.picks > 1.5;
}

Spaced spaced_by(const Weave& weave, Loom loom, int shafts) {
    if (loom == Loom::pins) return Spaced::pins;
    if (draws_itself_in(weave)) return Spaced::weft;
    return weave.shafts > 2 || shafts > 2 ? Spaced::reed : Spaced::heddle;
}

// Any weave may be sleyed two or three to a dent, which spaces them nearly evenly; ends that share
// the hole of a rigid heddle rise and fall as one.
int most_together(const WovenCloth& cloth) {
    if (cloth.by == Spaced::pins) return 1;
    if (cloth.by == Spaced::heddle) return cloth.weave->most_in_hole;
    return std::max(static_cast<int>(most_in_dent), cloth.weave->most_in_hole);
}

std::vector<Heddle> at_hand(const WovenCloth& cloth, const Equipment& owned) {
    if (!owned.heddles.empty() && cloth.by != Spaced::pins) return owned.heddles;
    std::vector<Heddle> out;
    for (const auto count : sold(cloth.by, owned.sold_by)) out.emplace_back(count);
    return out;
}

void set_with(const Heddle& heddle, int in_hole, int together, WovenCloth& cloth) {
    cloth.heddle = heddle.count;
    cloth.in_hole = in_hole;
    cloth.heddles_together = together;
    cloth.ends = heddle.count * (in_hole * together);
    cloth.share = cloth.ends / cloth.greatest;
    if (cloth.by == Spaced::heddle) cloth.hole = hole_of(heddle);
}

// The sett whose share lies nearest the middle of the band; the first listed of two as near. Where
// no heddle comes near, two alike may: plain weave is threaded through both by turns.
void choose_heddle(const Equipment& owned, WovenCloth& cloth) {
    const auto heddles = at_hand(cloth, owned);
    const double middle = middle_of(cloth.wanted);
    double best = INFINITY;
    const auto offer = [&](const Heddle& heddle, int in_hole, int together) {
        const double off = std::abs(heddle.count * (in_hole * together) / cloth.greatest - middle);
        if (off >= best) return;
        best = off;
        set_with(heddle, in_hole, together, cloth);
    };
    for (int in_hole = 1; in_hole <= most_together(cloth); ++in_hole)
        for (const auto& heddle : heddles) offer(heddle, in_hole, 1);
    const bool plain = cloth.weave->warp_float == 1 && cloth.weave->weft_float == 1;
    if (cloth.by == Spaced::heddle && plain && !near(cloth.share, cloth.wanted))
        for (const auto& heddle : heddles)
            if (near(heddle.count * 2 / cloth.greatest, cloth.wanted)) offer(heddle, 1, 2);
    cloth.within_reach = near(cloth.share, cloth.wanted);
}

void close_up(WovenCloth& cloth) {
    cloth.share = middle_of(cloth.wanted);
    cloth.ends = cloth.heddle = cloth.greatest * cloth.share;
}

// Ends that share a hole lie over each other: their widths add as squares.
bool passes(const WovenCloth& cloth, Length squeezed) {
    return cloth.by != Spaced::heddle || squeezed * std::sqrt(cloth.in_hole) <= cloth.hole;
}

Loss kept_by_sample(const Estimate<double>& kept) {
    return {1 - kept.mid, 1 - kept.high(), 1 - kept.low()};
}

// What pins or the weft hold at the edges does not draw in.
void lose(const YarnProfile& yarn, const Weaving& how, WovenCloth& cloth) {
    const double warp = how.warp_hair.value_or(yarn.hair);
    const double weft = how.weft_hair.value_or(yarn.hair);
    const bool reeded = cloth.by == Spaced::heddle || cloth.by == Spaced::reed;
    cloth.drawn_in = reeded ? draw_in() : Loss{};
    cloth.width = reeded ? width_loss(how.finish, weft) : washing_width_loss(how.finish, weft);
    cloth.length = length_loss(how.finish, warp);
    if (cloth.by == Spaced::weft || hides_warp(*cloth.weave))
        for (auto* loss : {&cloth.drawn_in, &cloth.width, &cloth.length})
            *loss = packed_close(*loss);
    if (const auto& kept = yarn.evidence.width_kept) cloth.width = kept_by_sample(*kept);
    if (const auto& kept = yarn.evidence.length_kept) cloth.length = kept_by_sample(*kept);
    const auto besides = yarn.evidence.width_kept ? after_sample : before_sample;
    cloth.spread = together(besides, together(spread_kept(cloth.width), spread_kept(cloth.length)));
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

WovenCloth weave_cloth(const YarnProfile& yarn, const Weave& weave, const Weaving& how,
                       const Equipment& owned) {
    const auto thickness = how.thickness.value_or(yarn.packed_diameter);
    WovenCloth cloth;
    cloth.weave = std::make_shared<const Weave>(weave);
    cloth.by = spaced_by(weave, how.loom, owned.shafts);
    cloth.greatest = greatest_sett(weave, thickness);
    cloth.wanted = share_band(how.spacing);
    if (cloth.by == Spaced::weft)
        close_up(cloth);
    else
        choose_heddle(owned, cloth);
    cloth.picks = cloth.ends * weave.picks;
    cloth.shafts_enough = owned.shafts == 0 || owned.shafts >= weave.shafts;
    cloth.through_hole = passes(cloth, thickness);
    // The system that is hidden lies nearly straight; the one that shows bends round it.
    const auto bent_round = std::min(cloth.ends, cloth.picks);
    const double crimp = weave.take_up * take_up(bent_round, thickness);
    cloth.warp_take_up = std::min(crimp, double{most_take_up});
    lose(yarn, how, cloth);
    return cloth;
}

}  // namespace gristwright
