#include "engine/cloth/knitting.hpp"

#include <algorithm>
#include <cmath>

#include "engine/cloth/knitting_constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

// The loop that usual hands make on a needle; yarn too thick for it jams first.
Length loop_of_needle(Length needle, LinearDensity yarn) {
    return std::max(loop_on(needle), loop_for_tightness(yarn, tightest));
}

Gauge gauge_on(Length needle, LinearDensity yarn) {
    return stitches_from_loop(loop_of_needle(needle, yarn), Relaxation::full);
}

void guess_ordinary(const YarnProfile& yarn, KnitCloth& cloth) {
    cloth.by_grist = cloth.ordinary = gauge_by_grist(yarn.linear_density.mid);
    if (!yarn.wraps_tell_gauge) return;
    cloth.by_wraps = gauge_by_wraps(yarn.laid_wraps.mid, yarn.laid_wraps.spread);
    cloth.ordinary = weigh(cloth.by_grist, cloth.by_wraps);
}

Length wanted_for(Firmness purpose, const KnitCloth& cloth, LinearDensity yarn) {
    const auto ordinary = needle_for(loop_from_stitches(cloth.ordinary.mid, Relaxation::full));
    return needle_wanted(purpose, ordinary, yarn);
}

void take_needle(Length wanted, const std::vector<Length>& owned, KnitCloth& cloth) {
    cloth.needle_wanted = wanted;
    cloth.needle = nearest_needle(wanted, owned);
    cloth.needle_owned = needle_serves(cloth.needle, wanted, cloth.purpose);
    const auto serve = std::count_if(owned.begin(), owned.end(), [&](Length needle) {
        return needle_serves(needle, wanted, cloth.purpose);
    });
    cloth.needle_told = !owned.empty() && serve <= 1;
}

void gauge_by_needle(const YarnProfile& yarn, const std::vector<Length>& owned, KnitCloth& cloth) {
    const auto grist = yarn.linear_density.mid;
    take_needle(wanted_for(cloth.purpose, cloth, grist), owned, cloth);
    cloth.gauge = {gauge_on(cloth.needle, grist), together(between_knitters, needle_to_gauge)};
    if (const auto& habit = yarn.evidence.habit) cloth.gauge = by_habit(cloth.gauge, *habit);
}

// By the needle that the swatch was knitted on: the same for the same gauge, else as much thicker
// or thinner as usual hands would take.
void take_swatch_needle(const Evidence& seen, const std::vector<Length>& owned, KnitCloth& cloth) {
    const auto usual = [](Gauge gauge) {
        return needle_for(loop_from_stitches(gauge, Relaxation::full));
    };
    const double moved = usual(cloth.gauge.mid) / usual(seen.on_needle);
    cloth.needle_of_swatch = true;
    if (std::abs(moved - 1) > same_needle) return take_needle(*seen.needle * moved, owned, cloth);
    cloth.needle_wanted = cloth.needle = *seen.needle;
    cloth.needle_owned = cloth.needle_told = true;
}

// As counted; for another firmness than the swatch's own, by what the table puts between them.
void gauge_by_swatch(const YarnProfile& yarn, const std::vector<Length>& owned, KnitCloth& cloth) {
    const auto grist = yarn.linear_density.mid;
    cloth.from_swatch = true;
    cloth.gauge = yarn.evidence.gauge.value_or(
        Estimate<Gauge>{yarn.washed_gauge.value_or(Gauge{}), swatch_gauge});
    const auto of = yarn.evidence.knitted_for;
    if (yarn.evidence.gauge && of && *of != cloth.purpose) {
        cloth.counted = cloth.gauge.mid;
        const double firmer = gauge_on(wanted_for(cloth.purpose, cloth, grist), grist) /
                              gauge_on(wanted_for(*of, cloth, grist), grist);
        cloth.gauge = {cloth.gauge.mid * firmer, together(cloth.gauge.spread, habit_carried)};
    }
    if (yarn.evidence.needle) return take_swatch_needle(yarn.evidence, owned, cloth);
    take_needle(needle_for(loop_from_stitches(cloth.gauge.mid, Relaxation::full)), owned, cloth);
}

TightnessBand band_of(const KnitCloth& cloth, LinearDensity yarn) {
    const auto wanted = wanted_for(cloth.purpose, cloth, yarn);
    const double freedom = needle_freedom(cloth.purpose);
    const auto on = [&](double share) {
        return tightness(yarn, loop_of_needle(wanted * share, yarn));
    };
    return {on(1 + freedom), on(1 - freedom)};
}

Estimate<double> growth_of(const KnitFabric& fabric, Firmness purpose) {
    const auto& plain = purpose_constants[static_cast<std::size_t>(purpose)].blocked;
    return {fabric.growth * plain, together(band_spread(fabric.growth_low, fabric.growth_high),
                                            band_spread(plain.low, plain.high))};
}

// Where nobody said which needle: what another one would make of the loop.
double needle_margin(const KnitCloth& cloth) {
    if (cloth.from_swatch || cloth.needle_told) return 0;
    return needle_taken_for(cloth.purpose) *
           (cloth.needle / (cloth.needle - millimetres(needle_offset)));
}

// What is not known of the cloth itself; what its pieces add is their article's (PieceRange).
double metres_margin(const KnitCloth& cloth) {
    return together(together(cloth.gauge.spread, needle_margin(cloth)),
                    together(besides_gauge, fabric_range(cloth)));
}

// What weighed swatches tell of this fabric: its own swatch all of it; those of other fabrics only
// what fabrics share, so that this one's own range stays.
void take_weighed(const Evidence& evidence, KnitCloth& cloth) {
    auto& metres = cloth.metres_per_area;
    if (const auto* own = evidence.weighed_in(cloth.fabric->name)) {
        metres = {metres.mid * own->metres.mid, own->metres.spread};
        return;
    }
    Estimate<double> against_table{1, metres.spread};
    for (const auto& other : evidence.weighed)
        against_table = posterior(
            against_table,
            {other.metres.mid, std::hypot(other.metres.spread, other.own, fabric_range(cloth))});
    const double least = evidence.weighed.empty() ? 0 : fabric_range(cloth);
    metres = {metres.mid * against_table.mid, std::max(against_table.spread, least)};
}

void measure(const YarnProfile& yarn, KnitCloth& cloth) {
    const auto& fabric = *cloth.fabric;
    cloth.loop = loop_from_stitches(cloth.gauge.mid, Relaxation::full);
    cloth.tightness = tightness(yarn.linear_density.mid, cloth.loop);
    const double stretch = std::sqrt(cloth.growth.mid);
    cloth.stitches = cloth.gauge.mid * (fabric.stitches / stretch);
    const double row_ratio = yarn.evidence.rows ? yarn.evidence.rows->mid : 1;
    cloth.rows = rows_by_hand(cloth.gauge.mid) * (row_ratio * fabric.rows / stretch);
    // The loop's length tells the metres, as the constants have it; only rows that were counted
    // move them. Loops per area ks / l^2: metres per area go as the root of stitches x rows.
    const auto plain = plain_metres_per_area(cloth.loop, Relaxation::full) * std::sqrt(row_ratio);
    cloth.metres_per_area = {plain * (fabric.metres / cloth.growth.mid), metres_margin(cloth)};
    take_weighed(yarn.evidence, cloth);
    cloth.mass_per_area = cloth.metres_per_area.mid * yarn.linear_density.mid;
}

}  // namespace

const Constant& needle_taken_for(Firmness purpose) {
    return purpose == Firmness::sock ? sock_needle_taken : needle_taken;
}

Length longest_strand(const KnitCloth& cloth) {
    return Length::from_si(cloth.fabric->longest_strand / cloth.stitches.si());
}

double fabric_range(const KnitCloth& cloth) {
    const auto& f = *cloth.fabric;
    return together(band_spread(f.metres_low, f.metres_high), cloth.growth.spread);
}

Length needle_known(const KnitCloth& cloth) {
    const bool unknown = cloth.from_swatch && cloth.counted.si() <= 0 && !cloth.needle_of_swatch;
    return unknown ? Length{} : cloth.needle;
}

KnitCloth knit_cloth(const YarnProfile& yarn, const KnitFabric& fabric, Firmness purpose,
                     const std::vector<Length>& needles) {
    KnitCloth cloth;
    cloth.fabric = std::make_shared<const KnitFabric>(fabric);
    cloth.purpose = purpose;
    guess_ordinary(yarn, cloth);
    if (yarn.washed_gauge || yarn.evidence.gauge)
        gauge_by_swatch(yarn, needles, cloth);
    else
        gauge_by_needle(yarn, needles, cloth);
    cloth.wanted = band_of(cloth, yarn.linear_density.mid);
    cloth.growth = growth_of(fabric, purpose);
    measure(yarn, cloth);
    return cloth;
}

}  // namespace gristwright
