#include "engine/yarn/profile.hpp"

#include "engine/yarn/constants.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/yarn/count.hpp"
#include "engine/yarn/kinds.hpp"
#include "engine/yarn/softness.hpp"
#include "engine/yarn/squeezed.hpp"

namespace gristwright {
namespace {

using namespace constants;

// A value equally likely anywhere in its range, as a standard deviation of the logarithm.
double spread_of(const Constant& c) { return band_spread(c.low, c.high); }

const Constant* washed_share(LengthState state) {
    if (state == LengthState::on_reel) return &washed_from_reel;
    if (state == LengthState::off_reel) return &washed_from_rest;
    return nullptr;
}

void question(bool insist, YarnProfile& out, const UnlikelyMeasure& doubt) {
    if (!insist) throw ImplausibleYarn(doubt);
    out.cautions.push_back({Beware::insisted, "", doubt});
}

void check_skein(const Skein& s, bool insist, YarnProfile& out) {
    if (!(s.length.si() > 0) || !(s.mass.si() > 0))
        throw ImplausibleYarn(
            fmt::format("{}: length and mass must both be more than zero", s.name));
    const double grist = in_tex(s.mass / s.length);
    const bool swapped = in_grams(s.mass) > in_metres(s.length);
    if (grist > thickest_yarn || grist < finest_yarn)
        question(insist, out,
                 {UnlikelyMeasure::Of::skein, s.name, s.length, s.mass, {}, 0, swapped});
}

// Skeins as washed; also the widest doubt that their states bring to the metres.
double weigh_skeins(const Batch& batch, YarnProfile& out) {
    double widest = 0;
    for (const auto& s : batch.skeins) {
        auto washed = s;
        double doubt = 0;
        if (const auto* share = washed_share(s.state)) {
            washed.length = s.length * *share;
            doubt = spread_of(*share);
        }
        const auto margin = grist_margin(washed, batch.measuring);
        out.skeins.push_back({s.name,
                              washed.length,
                              s.mass,
                              {s.mass / washed.length, together(margin.whole(), doubt)},
                              margin});
        widest = std::max(widest, doubt);
    }
    return widest;
}

void compare_skeins(const Batch& batch, YarnProfile& out) {
    std::vector<GristReading> readings;
    for (const auto& s : out.skeins)
        readings.push_back({std::log(in_tex(s.linear_density.mid)), s.margin.own()});
    out.agreement = agree(readings, kinds_of(batch.skeins));
    const auto state = batch.skeins.front().state;
    if (std::any_of(batch.skeins.begin(), batch.skeins.end(),
                    [&](const Skein& s) { return s.state != state; }))
        out.agreement.answer = SameYarn::states_differ;
    out.consistency = std::clamp(1 - out.agreement.between / no_consistency, 0.0, 1.0);
}

// What is each skein's own averages out over the batch; what they share does not.
double batch_margin(const YarnProfile& out) {
    double own = 0;
    for (const auto& s : out.skeins) own = std::hypot(own, s.mass / out.mass * s.margin.own());
    const auto& shared = out.skeins.front().margin;
    return together(own, together(shared.loop, shared.humidity));
}

void total(double state_doubt, YarnProfile& out) {
    Length length;
    double own = 0, shared = 0;
    for (const auto& s : out.skeins) {
        length += s.length;
        out.mass += s.mass;
        own = std::hypot(own, s.length.si() * together(s.margin.length, s.margin.relaxation));
        shared = s.margin.loop;
    }
    const double metres_spread = together(together(own / length.si(), shared), state_doubt);
    out.length = {length, metres_spread};
    out.linear_density = {out.mass / length, together(batch_margin(out), state_doubt)};
}

// Fibre not given is taken for wool, and said to be.
bool mostly_wool(const Batch& batch) {
    double wool = batch.fibre.empty() ? 1 : 0;
    for (const auto& part : batch.fibre)
        if (part.kind == "sheep" || part.kind.empty()) wool += part.share;
    return wool >= 0.5;
}

void wrap(const Batch& batch, YarnProfile& out) {
    const auto grist = out.linear_density.mid;
    if (!batch.wraps) {
        const double root = std::sqrt(count_of(grist, count_system("yards per pound")));
        out.laid_wraps = {wraps_per_inch(wraps_per_root_grist * root),
                          spread_of(wraps_per_root_grist)};
        out.laid_diameter = diameter_from_wraps(out.laid_wraps.mid);
        out.assumed.push_back({Assumed::wraps_from_grist, out.laid_wraps.mid, {}});
        return;
    }
    out.wraps_measured = true;
    out.wraps_tell_gauge = mostly_wool(batch);
    out.wraps_packed = batch.wraps->how == WrapsHow::packed;
    out.laid_wraps = {batch.wraps->count, wraps_margin(*batch.wraps)};
    if (out.wraps_packed)
        out.laid_wraps = {batch.wraps->count * packed_to_laid,
                          together(out.laid_wraps.spread, spread_of(packed_to_laid))};
    if (batch.wraps->how == WrapsHow::assumed_laid)
        out.assumed.push_back({Assumed::wraps_laid, {}, {}});
    out.laid_diameter = diameter_from_wraps(out.laid_wraps.mid);
}

Density fibre_density(const Batch& batch) {
    if (batch.fibre.empty()) return FibrePart{}.density;
    double volume = 0;
    for (const auto& part : batch.fibre) volume += part.share / part.density.si();
    return Density::from_si(1 / volume);
}

void judge_loft(const Batch& batch, bool insist, YarnProfile& out) {
    if (!batch.wraps) return;
    const auto counted = batch.wraps->count;
    const auto grist = out.linear_density.mid;
    const double given = packing_from_wraps(grist, counted, fibre_density(batch));
    if (given > closest_packing)
        throw ImplausibleYarn(
            fmt::format("{:.0f} wraps per inch would need {:.0f} % of the space to be fibre, and "
                        "{:.0f} % is the most there can be: check the wraps, lengths and masses",
                        in_wraps_per_inch(counted), 100 * given, 100 * closest_packing));
    out.packing = {packing_from_wraps(grist, out.laid_wraps.mid, fibre_density(batch)),
                   packing_margin(out.linear_density.spread, out.laid_wraps.spread)};
    out.specific_volume = specific_volume(grist, out.laid_wraps.mid);
    out.usual = usual_packing(batch.preparation, batch.draw);
    if (!out.wraps_packed && (given > likely_packing_most || given < likely_packing_least))
        question(
            insist, out,
            {UnlikelyMeasure::Of::wraps, "", {}, {}, counted, given, given > likely_packing_most});
}

void classify(const YarnTables& tables, YarnProfile& out) {
    out.class_by_grist = classes_by_grist(tables.classes, out.linear_density.mid);
    if (out.wraps_measured)
        out.class_by_wraps = classes_by_wraps(tables.classes, out.laid_wraps.mid);
}

std::optional<double> twist_factor(const Batch& batch, LinearDensity grist) {
    if (!batch.ply_twist) return {};
    return in_turns_per_inch(*batch.ply_twist) /
           std::sqrt(count_of(grist, count_system("worsted count")));
}

void characterise(const Batch& batch, const YarnTables& tables, YarnProfile& out) {
    out.twist_factor = twist_factor(batch, out.linear_density.mid);
    std::optional<double> packing;
    if (out.wraps_measured) packing = out.packing.mid;
    const auto drivers = drivers_of(batch, packing, out.twist_factor);
    for (std::size_t t = 0; t < trait_count; ++t)
        out.traits[t] = trait(static_cast<TraitName>(t), drivers, tables.traits);
    if (const auto mean = mean_diameter(batch.fibre)) {
        out.fibre_diameter = *mean;
        out.share_over_prickle = share_over_prickle(*out.fibre_diameter);
    }
    const bool wool = !batch.fibre.empty() && batch.fibre.front().kind == "sheep";
    if (out.fibre_diameter && wool)
        if (const auto* grade = wool_grade(tables.grades, *out.fibre_diameter))
            out.grade = fmt::format("{} ({} blood)", grade->count, grade->blood);
    out.plies = batch.plies;
    out.plied = batch.plies >= 2;
    for (const auto& part : batch.fibre)
        if (part.felting == "high" || out.felting.empty()) out.felting = part.felting;
}

template <class Is>
bool any_skein(const Batch& batch, Is is) {
    return std::any_of(batch.skeins.begin(), batch.skeins.end(), is);
}

void note_what_is_assumed(const Batch& batch, YarnProfile& out) {
    const auto note = [&](bool is, Assumed what) {
        if (is) out.assumed.push_back({what, {}, {}});
    };
    note(any_skein(batch, [](const Skein& s) { return s.state == LengthState::unknown; }),
         Assumed::lengths_washed);
    note(batch.fibre.empty(), Assumed::wool);
    note(!batch.fibre.empty() && batch.fibre.front().name.empty(), Assumed::own_fibre_is_wool);
    note(batch.preparation == Preparation::unknown, Assumed::preparation_between);
    note(batch.draw == Draw::unknown, Assumed::draw_between);
    note(batch.plies == 0, Assumed::plies_between);
    note(!batch.ply_twist, Assumed::twist_ordinary);
    if (batch.measuring.scale_step.si() > 0)
        out.assumed.push_back({Assumed::scale_step, {}, batch.measuring.scale_step});
}

void caution(const Batch& batch, YarnProfile& out) {
    const auto when = [&](bool holds, Beware what) {
        if (holds) out.cautions.push_back({what, ""});
    };
    when(out.agreement.answer == SameYarn::states_differ, Beware::states_differ);
    when(out.agreement.answer == SameYarn::differ, Beware::several_yarns);
    when(out.agreement.answer == SameYarn::alternate, Beware::alternate);
    when(out.felting == "high", Beware::felts);
    when(batch.is(Made::energised) && batch.plies != 1, Beware::live_twist);
    when(batch.is(Made::plied_z), Beware::plied_z);
    when(batch.is(Made::chain_plied), Beware::chain_plied);
    when(batch.plies == 1 && !batch.is(Made::fulled), Beware::lively_singles);
}

}  // namespace

YarnProfile profile(const Batch& batch, const YarnTables& tables, bool insist) {
    if (batch.skeins.empty()) throw ImplausibleYarn("a batch needs at least one skein");
    YarnProfile out;
    for (const auto& skein : batch.skeins) check_skein(skein, insist, out);
    const double state_doubt = weigh_skeins(batch, out);
    compare_skeins(batch, out);
    out.state_doubt = state_doubt;
    total(state_doubt, out);
    out.close_packing = close_packing(batch, out.linear_density.mid);
    out.packed_diameter = packed_diameter(out.linear_density.mid, out.close_packing);
    out.hair = share_of_hair(batch);
    out.washed_gauge = batch.washed_gauge;
    note_what_is_assumed(batch, out);
    wrap(batch, out);
    judge_loft(batch, insist, out);
    classify(tables, out);
    characterise(batch, tables, out);
    caution(batch, out);
    return out;
}

}  // namespace gristwright
