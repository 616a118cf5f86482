#include "engine/yarn/profile.hpp"

#include "engine/yarn/constants.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/cloth/constants.hpp"
#include "engine/cloth/loop.hpp"
#include "engine/cloth/sett.hpp"
#include "engine/yarn/bad_yarn.hpp"
#include "engine/yarn/count.hpp"
#include "engine/yarn/softness.hpp"

namespace gristwright {
namespace {

using namespace constants;

// Half the width of what is likely, as a standard deviation of the logarithm.
double spread_of(const Constant& c) { return band_spread(c.low, c.high); }

const Constant* washed_share(LengthState state) {
    if (state == LengthState::on_reel) return &washed_from_reel;
    if (state == LengthState::off_reel) return &washed_from_rest;
    return nullptr;
}

void question(bool insist, YarnProfile& out, const std::string& doubt) {
    if (!insist) throw ImplausibleYarn(doubt, true);
    out.cautions.push_back("you insisted: " + doubt);
}

void check_skein(const Skein& s, bool insist, YarnProfile& out) {
    if (!(s.length.si() > 0) || !(s.mass.si() > 0))
        throw ImplausibleYarn(
            fmt::format("{}: length and mass must both be more than zero", s.name), false);
    const double grist = in_tex(s.mass / s.length);
    if (grist > thickest_yarn && in_grams(s.mass) > in_metres(s.length))
        question(insist, out,
                 fmt::format("{}: {:.0f} m weighing {:.0f} g is a yarn of {:.0f} tex; are the "
                             "length and the mass swapped?",
                             s.name, in_metres(s.length), in_grams(s.mass), grist));
    else if (grist > thickest_yarn || grist < finest_yarn)
        question(insist, out,
                 fmt::format("{}: {:.0f} m weighing {:.1f} g is a yarn of {:.1f} tex; are the "
                             "units right?",
                             s.name, in_metres(s.length), in_grams(s.mass), grist));
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
    out.agreement = agree(readings);
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
        out.assumed.push_back(fmt::format("no wraps given: about {:.0f} wpi guessed from the grist",
                                          in_wraps_per_inch(out.laid_wraps.mid)));
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
        out.assumed.push_back("wraps counted laid side by side, not packed");
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
                        in_wraps_per_inch(counted), 100 * given, 100 * closest_packing),
            false);
    out.packing = {packing_from_wraps(grist, out.laid_wraps.mid, fibre_density(batch)),
                   packing_margin(out.linear_density.spread, out.laid_wraps.spread)};
    out.specific_volume = specific_volume(grist, out.laid_wraps.mid);
    out.usual = usual_packing(batch.preparation, batch.draw);
    if (!out.wraps_packed && (given > 0.45 || given < 0.02))
        question(insist, out,
                 fmt::format("{:.0f} wraps per inch laid side by side at this grist means {:.0f} % "
                             "fibre; {}",
                             in_wraps_per_inch(counted), 100 * given,
                             given > 0.45 ? "were the wraps packed tight? then say so"
                                          : "is a length or a mass wrong?"));
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

void say_what_is_assumed(const Batch& batch, YarnProfile& out) {
    const auto missing = [&](bool is, const char* said) {
        if (is) out.assumed.emplace_back(said);
    };
    missing(any_skein(batch, [](const Skein& s) { return s.state == LengthState::unknown; }),
            "lengths taken on washed, rested skeins");
    missing(batch.fibre.empty(), "fibre not given: wool is taken, its thickness left open");
    missing(!batch.fibre.empty() && batch.fibre.front().name.empty(), "your own fibre is wool");
    missing(batch.preparation == Preparation::unknown,
            "preparation not given: between carded and combed");
    missing(batch.draw == Draw::unknown, "draw not given: between long and short");
    missing(batch.plies == 0, "plies not given: between singles and three-ply");
    missing(!batch.ply_twist, "twist not measured: an ordinary amount");
    if (batch.measuring.scale_step.si() > 0)
        out.assumed.push_back(
            fmt::format("scale read to {:g} g", in_grams(batch.measuring.scale_step)));
}

double margin90(double spread) { return 100 * 1.645 * spread; }

// Each measurement that is missing, and how the range it bears on would narrow.
void say_what_sharpens(const Batch& batch, YarnProfile& out) {
    if (!batch.washed_gauge)
        out.sharpen.push_back(
            fmt::format("knit and wash a swatch, count a gauge: metres within ±{:.0f} % become "
                        "±{:.0f} %",
                        margin90(no_swatch), margin90(counted_swatch)));
    if (!batch.wraps) {
        const auto alone = gauge_by_grist(out.linear_density.mid);
        const auto both =
            weigh(alone, gauge_by_wraps(out.laid_wraps.mid, wraps_margin({out.laid_wraps.mid})));
        out.sharpen.push_back(fmt::format(
            "wrap the yarn round a ruler: the needle for it ±{:.0f} % becomes ±{:.0f} %",
            margin90(alone.spread), margin90(both.spread)));
    }
    if (any_skein(batch, [](const Skein& s) { return washed_share(s.state) != nullptr; }))
        out.sharpen.push_back(
            fmt::format("wash, dry and measure the skeins again: metres ±{:.0f} % become ±2 %",
                        margin90(out.length.spread)));
    const auto& lightest = *std::max_element(
        out.skeins.begin(), out.skeins.end(),
        [](const auto& a, const auto& b) { return a.margin.mass < b.margin.mass; });
    const double mass = lightest.margin.mass;
    if (mass > 0.01)
        out.sharpen.push_back(
            fmt::format("weigh on a finer scale: of {} alone ±{:.1f} % comes from the scale",
                        lightest.name, margin90(mass)));
    if (!batch.ply_twist)
        out.sharpen.emplace_back(
            "count plied turns in 10 cm: definition, wear and warp fitness firm up");
    if (!out.fibre_diameter)
        out.sharpen.emplace_back("name the fibre or its micron: softness and wear firm up");
}

void caution(const Batch& batch, YarnProfile& out) {
    if (out.agreement.answer == SameYarn::states_differ)
        out.cautions.emplace_back(
            "skeins measured in different states (reel, rested, washed) are not compared");
    if (out.agreement.answer == SameYarn::differ)
        out.cautions.push_back(fmt::format(
            "the skeins are {} yarns, too unlike to alternate: swatch and plan each by itself",
            out.agreement.yarns.size()));
    if (out.agreement.answer == SameYarn::alternate)
        out.cautions.emplace_back(
            "the skeins differ in grist: alternate them every two rows, or every few picks");
    if (out.felting == "high")
        out.cautions.emplace_back("this fibre felts easily: wash cool, without rubbing");
    if (batch.is(Made::energised) && batch.plies != 1)
        out.cautions.emplace_back("live twist: cloth of it leans or cockles; swatch and wash it");
    if (batch.is(Made::plied_z))
        out.cautions.emplace_back(
            "plied Z: some ways of knitting untwist it, and most crochet tightens it; swatch "
            "first");
    if (batch.is(Made::chain_plied))
        out.cautions.emplace_back("chain-plied: secure the end, one cut loop can run");
    if (batch.plies == 1 && !batch.is(Made::fulled))
        out.cautions.emplace_back("singles with live twist lean stitches and tangle as warp");
}

}  // namespace

YarnProfile profile(const Batch& batch, const YarnTables& tables, bool insist) {
    if (batch.skeins.empty()) throw ImplausibleYarn("a batch needs at least one skein", false);
    YarnProfile out;
    for (const auto& skein : batch.skeins) check_skein(skein, insist, out);
    const double state_doubt = weigh_skeins(batch, out);
    compare_skeins(batch, out);
    total(state_doubt, out);
    const auto spun = batch.preparation == Preparation::combed ? SpunAs::worsted : SpunAs::woollen;
    out.packed_diameter = packed_diameter(out.linear_density.mid, ashenhurst(spun));
    out.washed_gauge = batch.washed_gauge;
    say_what_is_assumed(batch, out);
    wrap(batch, out);
    judge_loft(batch, insist, out);
    classify(tables, out);
    characterise(batch, tables, out);
    say_what_sharpens(batch, out);
    caution(batch, out);
    return out;
}

}  // namespace gristwright
