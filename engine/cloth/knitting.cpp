#include "engine/cloth/knitting.hpp"

#include "engine/cloth/constants.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gristwright {
namespace {

using namespace constants;

constexpr double band_slack = 0.10;    // a swatch this near a band still serves it (judgement)
constexpr double needle_slack = 0.35;  // mm between the size wanted and one that will do

constexpr std::array usual_needles{2.0, 2.25, 2.5, 2.75, 3.0, 3.25, 3.5, 3.75, 4.0,  4.5,
                                   5.0, 5.5,  6.0, 6.5,  7.0, 8.0,  9.0, 10.0, 12.0, 15.0};

double to_band(double k, TightnessBand band) {
    if (k < band.low) return std::log(band.low / k);
    if (k > band.high) return std::log(k / band.high);
    return 0;
}

TightnessBand nearest_band(double k) {
    auto best = tightness_band(Firmness::lace);
    for (const auto purpose :
         {Firmness::drapey, Firmness::ordinary, Firmness::firm, Firmness::sock})
        if (to_band(k, tightness_band(purpose)) < to_band(k, best)) best = tightness_band(purpose);
    return best;
}

Estimate<Gauge> counted_gauge(const YarnProfile& yarn) {
    return yarn.evidence.gauge.value_or(
        Estimate<Gauge>{yarn.washed_gauge.value_or(Gauge{}), swatch_gauge});
}

Estimate<Gauge> gauge_from_swatch(const YarnProfile& yarn, Firmness purpose) {
    const auto counted = counted_gauge(yarn);
    if (yarn.evidence.knitted_for == purpose) return counted;
    const double k =
        tightness(yarn.linear_density.mid, loop_from_stitches(counted.mid, Relaxation::full));
    if (to_band(k, tightness_band(purpose)) <= band_slack) return counted;
    const double habit = std::clamp(k / nearest_band(k).middle(), 0.8, 1.25);
    const auto table = gauge_by_grist(yarn.linear_density.mid, purpose);
    return {table.mid * habit, together(counted.spread, habit_carried)};
}

void guess_gauge(const YarnProfile& yarn, Firmness purpose, KnitCloth& cloth) {
    cloth.by_grist = gauge_by_grist(yarn.linear_density.mid, purpose);
    cloth.gauge = cloth.by_grist;
    if (yarn.wraps_measured) {
        cloth.by_wraps = gauge_by_wraps(yarn.laid_wraps.mid, yarn.laid_wraps.spread, purpose);
        cloth.gauge = weigh(cloth.by_grist, cloth.by_wraps);
    }
    if (const auto& habit = yarn.evidence.habit) cloth.gauge = by_habit(cloth.gauge, *habit);
    cloth.from_swatch = yarn.washed_gauge || yarn.evidence.gauge;
    if (cloth.from_swatch) cloth.gauge = gauge_from_swatch(yarn, purpose);
}

void choose_needle(const std::vector<Length>& owned, KnitCloth& cloth) {
    const double wanted = in_millimetres(needle_for(cloth.usual_loop));
    const auto nearer = [&](double a, double b) {
        return std::abs(a - wanted) < std::abs(b - wanted);
    };
    if (owned.empty()) {
        cloth.needle =
            millimetres(*std::min_element(usual_needles.begin(), usual_needles.end(), nearer));
        return;
    }
    cloth.needle = *std::min_element(owned.begin(), owned.end(), [&](Length a, Length b) {
        return nearer(in_millimetres(a), in_millimetres(b));
    });
    const double away = std::abs(in_millimetres(cloth.needle) - wanted);
    cloth.needle_owned = away <= needle_slack + 0.05 * wanted;
}

// Before any swatch of this yarn: the margin between people gives way to that of these hands.
double unswatched(const std::optional<Estimate<double>>& habit) {
    if (!habit) return no_swatch;
    const double besides = no_swatch * no_swatch - between_knitters * between_knitters;
    return std::max<double>(counted_swatch, std::hypot(std::sqrt(besides), habit->spread));
}

double metres_margin(const KnitCloth& cloth, const Evidence& evidence) {
    const double known = cloth.from_swatch ? counted_swatch : unswatched(evidence.habit);
    const double built = together(cloth.gauge.spread, besides_gauge);
    const auto& f = *cloth.fabric;
    return together(std::max(known, built), together(band_spread(f.metres_low, f.metres_high),
                                                     band_spread(f.growth_low, f.growth_high)));
}

}  // namespace

Length longest_strand(const KnitCloth& cloth) {
    return Length::from_si(cloth.fabric->longest_strand / cloth.stitches.si());
}

KnitCloth knit_cloth(const YarnProfile& yarn, const KnitFabric& fabric, Firmness purpose,
                     const std::vector<Length>& needles) {
    KnitCloth cloth;
    cloth.fabric = std::make_shared<const KnitFabric>(fabric);
    cloth.purpose = purpose;
    guess_gauge(yarn, purpose, cloth);
    cloth.loop = loop_from_stitches(cloth.gauge.mid, Relaxation::full);
    cloth.tightness = tightness(yarn.linear_density.mid, cloth.loop);
    const bool by_habit_alone = yarn.evidence.habit && !cloth.from_swatch;
    cloth.usual_loop = cloth.loop * (by_habit_alone ? yarn.evidence.habit->mid : 1);
    choose_needle(needles, cloth);
    const double stretch = std::sqrt(fabric.growth);
    cloth.stitches = cloth.gauge.mid * (fabric.stitches / stretch);
    const double row_ratio = yarn.evidence.rows ? yarn.evidence.rows->mid : 1;
    cloth.rows = rows_from_loop(cloth.loop, Relaxation::full) * (row_ratio * fabric.rows / stretch);
    // Loops per area ks / l^2: metres per area go as the root of stitches x rows.
    const auto plain = plain_metres_per_area(cloth.loop, Relaxation::full) * std::sqrt(row_ratio);
    cloth.metres_per_area = {plain * (fabric.metres / fabric.growth),
                             metres_margin(cloth, yarn.evidence)};
    if (const auto& weighed = yarn.evidence.metres)
        cloth.metres_per_area = {cloth.metres_per_area.mid * weighed->mid, weighed->spread};
    cloth.mass_per_area = cloth.metres_per_area.mid * yarn.linear_density.mid;
    return cloth;
}

}  // namespace gristwright
