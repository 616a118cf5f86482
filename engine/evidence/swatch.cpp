#include "engine/evidence/swatch.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "engine/cloth/knitting_constants.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/units/failure.hpp"

namespace gristwright {
namespace {

using namespace constants;

void need_positive(double value, const char* what) {
    if (!(value > 0)) throw Refused(fmt::format("{} must be above zero", what));
}

// Relative error of a count: reading both ends, and the unevenness of the threads counted.
double counting(const Counted& counted) {
    return std::hypot(read_error / counted.threads, unevenness / std::sqrt(counted.threads));
}

// Stocking stitch by the same hands, from a swatch in another fabric.
Estimate<Gauge> stocking_gauge(const KnittedSwatch& swatch, const KnitFabric& fabric) {
    const double per_metre = swatch.stitches.threads / swatch.stitches.over.si();
    double spread = std::hypot(counting(swatch.stitches), rest_differs);
    if (!swatch.washed) spread = std::hypot(spread, washing_moves);
    // How the fabric's stitches compare with stocking stitch is a figure of its own.
    if (fabric.stitches != 1 || fabric.growth != 1) spread = std::hypot(spread, other_fabric);
    return {Gauge::from_si(per_metre / fabric.stitches * std::sqrt(fabric.growth)), spread};
}

void question(Evidence& known, Estimate<double> expected, Estimate<double> seen, Seen what) {
    if (surprise(expected, seen) > worth_questioning)
        known.questions.push_back({what, seen.mid / expected.mid - 1});
}

// The table's gauge of stocking stitch in a yarn, whatever was swatched of it.
Estimate<Gauge> table_gauge(YarnProfile yarn, Firmness purpose) {
    yarn.washed_gauge.reset();
    yarn.evidence.gauge.reset();
    return knit_cloth(yarn, KnitFabric{}, purpose, {}).gauge;
}

// What a swatch of this firmness lets expect. Where it was not said, anything from lace to socks is
// expected, so of those the nearest to what was seen.
Estimate<double> expected_gauge(const KnittedSwatch& swatch, const YarnProfile& yarn, Gauge seen) {
    if (swatch.firmness) {
        const auto table = table_gauge(yarn, *swatch.firmness);
        return {table.mid.si(), table.spread};
    }
    const auto loosest = table_gauge(yarn, Firmness::lace);
    const auto firmest = table_gauge(yarn, Firmness::sock);
    return {std::clamp(seen.si(), std::min(loosest.mid, firmest.mid).si(),
                       std::max(loosest.mid, firmest.mid).si()),
            loosest.spread};
}

// What earlier swatches say of the firmness of this one.
Estimate<Gauge> carried_to(std::optional<Firmness> firmness, const Evidence& known,
                           const YarnProfile& yarn) {
    auto gauge = *known.gauge;
    if (!firmness || !known.knitted_for || *firmness == *known.knitted_for) return gauge;
    const double firmer =
        table_gauge(yarn, *firmness).mid / table_gauge(yarn, *known.knitted_for).mid;
    return {gauge.mid * firmer, together(gauge.spread, habit_carried)};
}

// The gauge now known: as counted. Several swatches are weighed together, and where they
// contradict each other the answer is no narrower for it.
Estimate<Gauge> observe_gauge(const KnittedSwatch& swatch, const KnitFabric& fabric,
                              const YarnProfile& yarn, Evidence& known) {
    const auto seen = stocking_gauge(swatch, fabric);
    if (!known.gauge) {
        question(known, expected_gauge(swatch, yarn, seen.mid), {seen.mid.si(), seen.spread},
                 Seen::gauge);
        known.gauge = seen;
    } else {
        const auto before = carried_to(swatch.firmness, known, yarn);
        question(known, {before.mid.si(), before.spread}, {seen.mid.si(), seen.spread},
                 Seen::gauge);
        known.gauge = weigh(before, seen);
    }
    if (swatch.firmness) known.knitted_for = swatch.firmness;
    return *known.gauge;
}

void observe_rows(const KnittedSwatch& swatch, const KnitFabric& fabric, Evidence& known) {
    if (!swatch.rows) return;
    const auto stocking = stocking_gauge(swatch, fabric);
    const auto expected = rows_by_hand(stocking.mid) * (fabric.rows / std::sqrt(fabric.growth));
    const Estimate<double> seen{swatch.rows->threads / swatch.rows->over.si() / expected.si(),
                                together(counting(*swatch.rows), stocking.spread)};
    const auto prior = known.rows.value_or(Estimate<double>{1, rows_between_knitters});
    question(known, prior, seen, Seen::rows_for_stitches);
    known.rows = posterior(prior, seen);
}

// The first is held against the table; further ones of the same fabric are weighed with it, and
// where they contradict each other the answer is no narrower for it.
void note_weighed(const KnitFabric& fabric, const KnitCloth& cloth, Estimate<double> seen,
                  Evidence& known) {
    const auto is_it = [&](const WeighedFabric& w) { return w.fabric == fabric.name; };
    const auto before = std::find_if(known.weighed.begin(), known.weighed.end(), is_it);
    const Estimate<double> table{1, cloth.metres_per_area.spread};
    question(known, before == known.weighed.end() ? table : before->metres, seen,
             Seen::yarn_for_area);
    if (before == known.weighed.end())
        known.weighed.push_back({fabric.name, posterior(table, seen), fabric_range(cloth)});
    else
        before->metres = weigh(before->metres, seen);
}

// False where its mass is not given or cannot be.
bool observe_mass(const KnittedSwatch& swatch, const KnitFabric& fabric, const YarnProfile& yarn,
                  Gauge gauge, Evidence& known) {
    if (!swatch.mass || !swatch.width || !swatch.length) return false;
    const auto cloth = knit_cloth(yarn, fabric, swatch.firmness.value_or(Firmness::ordinary), {});
    const auto area = *swatch.width * *swatch.length;
    const double measured = (*swatch.mass / yarn.linear_density.mid).si() / area.si();
    const double predicted = cloth.metres_per_area.mid.si() * (gauge / cloth.gauge.mid) *
                             std::sqrt(known.rows ? known.rows->mid : 1);
    const double reading =
        std::hypot(area_reading / swatch.width->si(), area_reading / swatch.length->si(),
                   swatch.scale_step / *swatch.mass / std::sqrt(12.0));
    const Estimate<double> seen{measured / predicted,
                                std::hypot(reading, swatch_and_rest, yarn.linear_density.spread)};
    if (seen.mid < least_in_a_stitch && !swatch.insisted) {
        known.questions.push_back({Seen::yarn_for_area, seen.mid - 1});
        return false;
    }
    const auto asked = known.questions.size();
    note_weighed(fabric, cloth, seen, known);
    if (swatch.insisted) known.questions.resize(asked);
    return true;
}

Estimate<double> kept(Length finished, Length before) {
    const double reading = std::hypot(area_reading / finished.si(), area_reading / before.si());
    return {finished / before, std::hypot(reading, swatch_and_rest)};
}

}  // namespace

void observe(const KnittedSwatch& swatch, const KnitFabric& fabric, const YarnProfile& yarn,
             Evidence& known) {
    need_positive(swatch.stitches.threads, "the stitches counted");
    need_positive(swatch.stitches.over.si(), "the length they were counted over");
    if (swatch.rows) need_positive(swatch.rows->threads, "the rows counted");
    if (swatch.rows) need_positive(swatch.rows->over.si(), "the length they were counted over");
    if (swatch.needle) need_positive(swatch.needle->si(), "the needle");
    const auto gauge = observe_gauge(swatch, fabric, yarn, known);
    if (swatch.needle) {
        known.needle = swatch.needle;
        known.on_needle = stocking_gauge(swatch, fabric).mid;
    }
    observe_rows(swatch, fabric, known);
    const bool weighed = observe_mass(swatch, fabric, yarn, gauge.mid, known);
    if (swatch.look) known.looks.push_back(*swatch.look);
    known.stands_on.push_back({Basis::knitted_swatch, fabric.name, swatch.washed, weighed, 0, {}});
}

void observe(const WovenSwatch& swatch, Finish finish, double hair, Evidence& known) {
    need_positive(swatch.width.si(), "the finished width");
    need_positive(swatch.length.si(), "the finished length");
    if (swatch.reed_width) {
        const Estimate<double> prior{1 - width_loss(finish, hair).mid,
                                     spread_kept(width_loss(finish, hair))};
        const auto seen = kept(swatch.width, *swatch.reed_width);
        question(known, prior, seen, Seen::width_kept);
        known.width_kept = posterior(known.width_kept.value_or(prior), seen);
    }
    if (swatch.woven_length) {
        const Estimate<double> prior{1 - length_loss(finish, hair).mid,
                                     spread_kept(length_loss(finish, hair))};
        const auto seen = kept(swatch.length, *swatch.woven_length);
        question(known, prior, seen, Seen::length_kept);
        known.length_kept = posterior(known.length_kept.value_or(prior), seen);
    }
    if (swatch.look) known.looks.push_back(*swatch.look);
    known.stands_on.push_back({Basis::woven_sample, "", true, false, 0, {}});
}

std::optional<Estimate<double>> gauge_against_table(const KnittedSwatch& swatch,
                                                    const KnitFabric& fabric,
                                                    const YarnProfile& yarn) {
    if (!swatch.washed) return {};
    const auto table = table_gauge(yarn, swatch.firmness.value_or(Firmness::ordinary));
    const auto seen = stocking_gauge(swatch, fabric);
    if (surprise({table.mid.si(), table.spread}, {seen.mid.si(), seen.spread}) > worth_questioning)
        return {};
    return Estimate<double>{seen.mid / table.mid, seen.spread};
}

namespace {

// Normal prior and observation, both spreads known.
void rate(Trait& trait, double seen, double spread) {
    const double a = 1 / (trait.spread * trait.spread), b = 1 / (spread * spread);
    trait.value = (a * trait.value + b * seen) / (a + b);
    trait.spread = 1 / std::sqrt(a + b);
}

void rate_alike(Trait& trait, const std::vector<double>& looks) {
    if (looks.empty()) return;
    const double table = trait.value;
    for (const double look : looks)
        rate(trait, table + look, together(rated_look, look_between_batches));
    trait.value = std::clamp(trait.value, 0.0, 1.0);
    trait.spread = std::max<double>(trait.spread, look_between_batches);
    trait.reasons.insert(trait.reasons.begin(), "looks rated on yarns made up alike");
}

}  // namespace

YarnProfile informed(YarnProfile yarn, const Evidence& known) {
    yarn.evidence = known;
    auto& definition = yarn.traits[static_cast<std::size_t>(TraitName::definition)];
    rate_alike(definition, known.looks_alike);
    for (const double look : known.looks) rate(definition, look, rated_look);
    if (!known.looks.empty())
        definition.reasons.insert(definition.reasons.begin(), "rated on your swatch");
    return yarn;
}

}  // namespace gristwright
