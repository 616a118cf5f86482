#include "engine/cloth/weaving.hpp"

#include "engine/cloth/weaving_constants.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

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

// How a warp may be set up with what there is.
struct Setting {
    Heddle heddle;
    Sleying sleying{};
    int together = 1;
};

// Any weave may be sleyed in any order, which spaces its ends nearly evenly; ends that share the
// hole of a rigid heddle rise and fall as one. Where every reed can be had, an uneven order only
// makes more of the one that is there.
bool may_sley(const SleyingRow& row, const WovenCloth& cloth, const Equipment& owned) {
    const auto& order = row.sleying;
    if (cloth.by == Spaced::pins) return order.ends() == 1 && order.even();
    if (cloth.by == Spaced::heddle)
        return order.even() && order.most() <= cloth.weave->most_in_hole;
    return order.even() || !owned.heddles.empty();
}

std::vector<Heddle> at_hand(const WovenCloth& cloth, const Equipment& owned) {
    if (!owned.heddles.empty() && cloth.by != Spaced::pins) return owned.heddles;
    std::vector<Heddle> out;
    for (const auto count : sold(cloth.by, owned.sold_by)) out.emplace_back(count);
    return out;
}

// Ends that share a hole lie over each other: their widths add as squares.
bool passes(const WovenCloth& cloth, Length squeezed) {
    return cloth.by != Spaced::heddle || squeezed * std::sqrt(cloth.sleying.most()) <= cloth.hole;
}

void set_with(const Setting& setting, Length squeezed, WovenCloth& cloth) {
    cloth.heddle = setting.heddle.count;
    cloth.sleying = setting.sleying;
    cloth.heddles_together = setting.together;
    cloth.ends = cloth.heddle * (setting.sleying.to_a_dent() * setting.together);
    cloth.share = cloth.ends / cloth.greatest;
    cloth.within_reach = near(cloth.share, cloth.wanted);
    if (cloth.by == Spaced::heddle) cloth.hole = hole_of(setting.heddle);
    cloth.through_hole = passes(cloth, squeezed);
}

// Where no heddle comes near, two alike may: plain weave is threaded through both by turns.
std::vector<Setting> settings(const Equipment& owned, const WovenCloth& cloth) {
    const auto heddles = at_hand(cloth, owned);
    std::vector<Setting> out;
    out.reserve(heddles.size() * std::size(sleyings));
    bool any_near = false;
    for (const auto& row : sleyings) {
        if (!may_sley(row, cloth, owned)) continue;
        for (const auto& heddle : heddles) {
            out.push_back({heddle, row.sleying});
            const auto ends = heddle.count * row.sleying.to_a_dent();
            any_near = any_near || near(ends / cloth.greatest, cloth.wanted);
        }
    }
    const bool plain = cloth.weave->warp_float == 1 && cloth.weave->weft_float == 1;
    if (cloth.by == Spaced::heddle && plain && !any_near)
        for (const auto& heddle : heddles)
            if (near(heddle.count * 2 / cloth.greatest, cloth.wanted))
                out.push_back({heddle, {}, 2});
    return out;
}

// Of what is owned the setting worth most; of those worth as much one sleyed evenly, then the one
// nearest the middle of the band, then the first listed. Where all that is sold can be had, the
// nearest to the middle.
void choose_heddle(const Equipment& owned, const Weaving& how, Length squeezed, WovenCloth& cloth) {
    const double middle = middle_of(cloth.wanted);
    const bool by_worth = how.worth && !owned.heddles.empty();
    const Setting* best = nullptr;
    std::tuple<double, bool, double> rank;
    const auto all = settings(owned, cloth);
    for (const auto& setting : all) {
        set_with(setting, squeezed, cloth);
        const double nearness = -std::abs(cloth.share - middle);
        const std::tuple next(by_worth ? how.worth(cloth) : nearness, setting.sleying.even(),
                              nearness);
        if (best && next <= rank) continue;
        best = &setting;
        rank = next;
    }
    set_with(*best, squeezed, cloth);
}

// As it is wanted: in what there is, where that gives it, else in a heddle or reed of that count.
void set_as_wanted(Sett wanted, const Equipment& owned, Length squeezed, WovenCloth& cloth) {
    const auto all = settings(owned, cloth);
    const auto gives_it = [&](const Setting& s) {
        return std::abs(s.heddle.count * s.sleying.to_a_dent() * s.together / wanted - 1) <
               same_sett;
    };
    const auto found = std::find_if(all.begin(), all.end(), gives_it);
    set_with(found == all.end() ? Setting{wanted} : *found, squeezed, cloth);
    cloth.within_reach = true;
}

void close_up(WovenCloth& cloth) {
    cloth.share = middle_of(cloth.wanted);
    cloth.ends = cloth.heddle = cloth.greatest * cloth.share;
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
    if (const auto& gathers = cloth.weave->gathers; gathers.mid > 0)
        for (auto* loss : {&cloth.width, &cloth.length}) *loss = after(*loss, gathers);
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
    else if (owned.sett && cloth.by != Spaced::pins)
        set_as_wanted(*owned.sett, owned, thickness, cloth);
    else
        choose_heddle(owned, how, thickness, cloth);
    cloth.picks = cloth.ends * weave.picks;
    cloth.shafts_enough = owned.shafts == 0 || owned.shafts >= weave.shafts;
    // The system that is hidden lies nearly straight; the one that shows bends round it.
    const auto bent_round = std::min(cloth.ends, cloth.picks);
    const double crimp = weave.take_up * take_up(bent_round, thickness);
    cloth.warp_take_up = std::min(crimp, double{most_take_up});
    lose(yarn, how, cloth);
    return cloth;
}

}  // namespace gristwright
