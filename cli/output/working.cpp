#include "cli/output/working.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "cli/output/layout.hpp"
#include "engine/cloth/knitting_constants.hpp"
#include "engine/cloth/sett_share.hpp"
#include "engine/cloth/spacing_words.hpp"
#include "engine/cloth/weaving_constants.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/project/constants.hpp"
#include "engine/suitability/constants.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"
#include "engine/yarn/softness.hpp"

namespace gristwright::cli {
namespace {

std::string step(const std::string& text) { return wrapped(text, 2) + "\n"; }

std::string figure(const Constant& c) { return figure_line(c, 6); }

std::string grist_steps(const Question& q) {
    const auto& yarn = q.yarn;
    const auto& m = yarn.skeins.front().margin;
    auto out = step(fmt::format("grist = mass / length = {:.1f} g / {:.1f} m = {:.1f} tex",
                                in_grams(yarn.mass), in_metres(yarn.length.mid),
                                in_tex(yarn.linear_density.mid)));
    out += step(fmt::format(
        "margin of {} (1 sd): scale {:.2f} %, length {:.2f} %, loop {:.2f} %, relaxation "
        "{:.2f} %, humidity {:.2f} %; together {:.2f} % (GUM, JCGM 100); between skeins, where "
        "loop and humidity are shared, {:.2f} %",
        yarn.skeins.front().name, 100 * m.mass, 100 * m.length, 100 * m.loop, 100 * m.relaxation,
        100 * m.humidity, 100 * m.whole(), 100 * m.own()));
    return out + figure(constants::relaxation_half_width) + figure(constants::humidity_half_width) +
           figure(constants::mass_per_humidity);
}

std::string agreement_steps(const Agreement& a) {
    if (a.answer == SameYarn::only_one_skein) return "";
    return step(
        fmt::format("skeins: statistic {:.2f}, critical {:.2f} (5 %); spread between "
                    "skeins beyond measuring {:.1f} % (DerSimonian and Laird 1986)",
                    a.statistic, a.critical, 100 * a.between));
}

std::string loft_steps(const YarnProfile& yarn) {
    if (!yarn.wraps_measured) return figure(constants::wraps_per_root_grist);
    return step(fmt::format("packing = tex / (fibre density x area of a circle 1 / wraps wide) = "
                            "{:.3f}, ±{:.0f} %",
                            yarn.packing.mid, 100 * yarn.packing.margin90())) +
           figure(constants::carded_packing) + figure(constants::combed_packing) +
           figure(constants::between_people);
}

std::string trait_steps(const Question& q) {
    auto out = step("traits are sums of the rows of the trait table that apply:");
    for (const auto& row : q.catalogue->yarn.traits)
        if (!row.source.empty())
            out += wrapped(fmt::format("{} {:+.2f}: [{}: {}]", words(row.trait), row.adds,
                                       words(row.mark), row.source),
                           6) +
                   "\n";
    return out;
}

std::string ordinary_steps(const KnitCloth& k, const YarnProfile& yarn) {
    auto out =
        step(fmt::format("ordinary stocking stitch by grist: loop = sqrt({:.0f} tex) / {:.2f}, "
                         "kw / loop = {:.1f} st/10 cm, ± {:.0f} %",
                         in_tex(yarn.linear_density.mid), usual_tightness(yarn.linear_density.mid),
                         in_stitches_per_10cm(k.by_grist.mid), 100 * k.by_grist.margin90())) +
        figure(constants::ordinary_tightness);
    if (1000 / in_tex(yarn.linear_density.mid) > constants::fine_from)
        out += figure(constants::fine_from) + figure(constants::fine_eases);
    if (1000 / in_tex(yarn.linear_density.mid) < constants::coarse_from)
        out += figure(constants::coarse_from) + figure(constants::coarse_eases);
    if (k.by_wraps.mid.si() > 0)
        out += step(fmt::format(
                   "by wraps = {:.2f} x {:.1f} wpi = {:.1f} st/10 cm, ± {:.0f} %; both "
                   "weighed {:.1f}",
                   constants::wraps_to_stitches.value, in_wraps_per_inch(yarn.laid_wraps.mid),
                   in_stitches_per_10cm(k.by_wraps.mid), 100 * k.by_wraps.margin90(),
                   in_stitches_per_10cm(k.ordinary.mid))) +
               figure(constants::wraps_to_stitches);
    return out;
}

std::string needle_steps(const KnitCloth& k, const YarnProfile& yarn) {
    const auto& wants = constants::purpose_constants[static_cast<std::size_t>(k.purpose)];
    auto out = step(fmt::format("needle of ordinary cloth = {:.4g} x loop {:+.3f} mm; for this x "
                                "{:.2f}, at least {:.2g} mm at 4 m/g: {:.2f} mm",
                                constants::needle_slope.value, constants::needle_offset.value,
                                wants.to_ordinary.value, wants.least.value,
                                in_millimetres(k.needle_wanted))) +
               figure(constants::needle_slope) + figure(wants.to_ordinary);
    if (wants.least > 0) out += figure(wants.least) + figure(constants::least_falls);
    out += step(fmt::format("{:g} mm usually makes a loop of {:.2f} mm", in_millimetres(k.needle),
                            in_millimetres(loop_on(k.needle)))) +
           figure(constants::needle_to_gauge) + figure(constants::between_knitters);
    if (const auto& habit = yarn.evidence.habit)
        out +=
            step(fmt::format("your hands, by other batches: x {:.3f}, ± {:.0f} % (normal prior and "
                             "mean; drawn towards 1)",
                             habit->mid, 100 * habit->margin90())) +
            figure(constants::habit_between_people) + figure(constants::habit_between_batches);
    return out;
}

std::string knit_steps(const KnitCloth& k, const YarnProfile& yarn) {
    auto out = step(k.fabric->name + ":");
    if (!k.from_swatch) out += ordinary_steps(k, yarn) + needle_steps(k, yarn);
    if (k.counted.si() > 0)
        out +=
            step(fmt::format("your washed swatch has {:.1f} st/10 cm, and was knitted for another "
                             "firmness",
                             in_stitches_per_10cm(k.counted)));
    out +=
        step(fmt::format("{} = {:.1f} st/10 cm, loop {:.2f} mm, tightness {:.2f}",
                         k.from_swatch ? "your washed swatch gives" : "gauge on that needle",
                         in_stitches_per_10cm(k.gauge.mid), in_millimetres(k.loop), k.tightness));
    const auto& loop = constants::loop_constants[static_cast<std::size_t>(Relaxation::full)];
    out += figure(loop.kw) + figure(loop.kc) + figure(constants::rows_to_stitches);
    out += step(fmt::format(
        "metres per area = kw kc / loop x {:.2f} for {} / {:.2f} blocked = {:.0f} m/m2, ± {:.0f} %",
        k.fabric->metres, k.fabric->name, k.growth.mid,
        in_metres_per_square_metre(k.metres_per_area.mid), 100 * k.metres_per_area.margin90()));
    out += wrapped(fmt::format("{}: {:.2f} to {:.2f}, blocked {:.2f} to {:.2f} [{}: {}]",
                               k.fabric->name, k.fabric->metres_low, k.fabric->metres_high,
                               k.fabric->growth_low, k.fabric->growth_high, words(k.fabric->mark),
                               k.fabric->source),
                   6) +
           "\n";
    out += figure(constants::purpose_constants[static_cast<std::size_t>(k.purpose)].blocked);
    if (!k.from_swatch && !k.needle_told) out += figure(needle_taken_for(k.purpose));
    if (k.from_swatch) out += figure(constants::swatch_gauge);
    return out + figure(constants::besides_gauge);
}

std::string apart_steps(const Template& article, const YarnProfile& yarn) {
    if (article.craft != Craft::knitted) return "";
    if (!yarn.evidence.weighed.empty()) return figure(constants::own_piece);
    return wrapped(
               fmt::format("pieces of this kind that people make: {:g} about each other "
                           "[{}: {}]",
                           article.apart.spread, words(article.apart.mark), article.apart.source),
               6) +
           "\n";
}

std::string lost(Loss loss) {
    return fmt::format("{:.0f} % ({:.0f} to {:.0f})", 100 * loss.mid, 100 * loss.low,
                       100 * loss.high);
}

std::string woven_steps(const WovenCloth& w, const YarnProfile& yarn, Spacing purpose) {
    auto out = step(fmt::format(
        "{}: squeezed diameter {:.3f} mm, {:.2f} sqrt(yd/lb) of them to the inch{}; greatest sett "
        "{:.1f} ends/10 cm",
        w.weave->name, in_millimetres(yarn.packed_diameter), yarn.close_packing,
        yarn.wraps_measured ? ", moved by the wraps counted" : "", in_ends_per_10cm(w.greatest)));
    out +=
        w.weave->sett > 0
            ? step(fmt::format("ends {:g} times plain weave's [{}: {}]", w.weave->sett,
                               words(w.weave->mark), w.weave->source))
            : step(fmt::format("= {0:g} / ({0:g} + {1:g}) / diameter (Ashenhurst)",
                               w.weave->interlacing.threads, w.weave->interlacing.intersections));
    out += figure(constants::woollen_c) + figure(constants::worsted_c);
    if (yarn.wraps_measured) out += figure(constants::loft_in_cloth);
    out += step(fmt::format("{}: {:.1f} ends/10 cm = {:.0f} %; {:.0f} to {:.0f} % wanted",
                            spacing_words(w), in_ends_per_10cm(w.ends), 100 * w.share,
                            100 * w.wanted.low, 100 * w.wanted.high)) +
           figure(share_for(purpose));
    if (w.hole.si() > 0)
        out += step(fmt::format("its hole: {:.2f} mm", in_millimetres(w.hole))) +
               figure(constants::hole_share);
    out +=
        step(fmt::format("take-up of the warp {:.1f} %; width lost from reed to off the loom "
                         "{}, to washed {}; length, off the loom to washed, {}",
                         100 * w.warp_take_up, lost(w.drawn_in), lost(w.width), lost(w.length)));
    if (const auto& weave = *w.weave; weave.gathers.mid > 0)
        out +=
            step(fmt::format("of both the weave itself draws up {} [{}: {}]", lost(weave.gathers),
                             words(weave.gathers_mark), weave.gathers_source));
    return out + figure(constants::draw_in_the_loom) + figure(constants::crimp_factor) +
           figure(constants::before_sample) +
           step("weft = picks x width in the reed (Taylor; Brooks 1892)") +
           figure(constants::weft_slack);
}

std::string certainty_steps(const Plan& p) {
    return step(fmt::format(
        "needed {:.0f} m ± {:.0f} %, to hand {:.0f} m ± {:.1f} %: chance = P(needed <= to hand), "
        "both log-normal = {}; asked {}",
        in_metres(p.need.mid), 100 * p.need.margin90(), in_metres(p.have.mid),
        100 * p.have.margin90(), percent(p.certainty), percent(p.asked)));
}

std::string suitability_steps(const Judgement& j) {
    auto out = step(
        "suitability = 100 x weighted geometric mean of desirabilities (Derringer and Suich "
        "1980):");
    for (std::size_t f = 0; f < factor_count; ++f) {
        const auto& factor = j.factors[f];
        if (factor.weight > 0)
            out += fmt::format(
                "      {:<14}had {:.2f}  wanted {:.2f}  weight {:.1f}  "
                "desirability {:.2f}\n",
                words(static_cast<FactorName>(f)), factor.had, factor.wanted, factor.weight,
                factor.desirability);
    }
    for (const auto& need : j.unmet)
        out +=
            wrapped(fmt::format("{}: had {:.2f}, keeps {:.2f} of it; enough {:.2f}, lacking {:.2f} "
                                "keeps {:.2f} [{}: {}]",
                                need.demand->reason, need.had, need.kept, need.demand->enough,
                                need.demand->lacking, need.demand->left, words(need.demand->mark),
                                need.demand->source),
                    6) +
            "\n";
    return out + figure(constants::reach);
}

// "heat_safety" as it is said.
std::string spaced(std::string_view column) {
    std::string out(column);
    std::replace(out.begin(), out.end(), '_', ' ');
    return out;
}

// What each fibre brings, as its row has it.
std::string fibre_steps(const Batch& batch) {
    std::string out;
    for (const auto& part : batch.fibre) {
        std::vector<std::string> said;
        for (std::size_t b = 0; b < behaviour_count; ++b)
            if (const auto& level = part.behaviour.levels[b])
                said.push_back(
                    fmt::format("{} {} [{}]", spaced(words(static_cast<Behaviour>(b))),
                                level->low == level->high
                                    ? fmt::format("{:.2f}", level->low)
                                    : fmt::format("{:.2f} to {:.2f}", level->low, level->high),
                                words(level->mark)));
        if (!said.empty()) out += step(inert(part.name) + ": " + joined(said));
    }
    return out;
}

}  // namespace

std::string figure_line(const Constant& c, std::size_t indent) {
    auto text = fmt::format("{} = {:g} {}", c.name, c.value, c.unit == "1" ? "" : c.unit);
    if (c.low != c.high) text += fmt::format(" ({:g} to {:g})", c.low, c.high);
    text += fmt::format(" [{}{}{}]", words(c.mark), c.source.empty() ? "" : ": ", c.source);
    return wrapped(text, indent) + "\n";
}

std::string yarn_working(const Question& q) {
    return "\n" + heading("Working") + "\n" + grist_steps(q) + agreement_steps(q.yarn.agreement) +
           loft_steps(q.yarn) + fibre_steps(q.measured.batch) + trait_steps(q) + not_shown();
}

std::string plan_working(const JudgedPlan& judged, const Question& q) {
    auto out = "\n" + heading("Working") + "\n" + grist_steps(q);
    std::string_view last;
    for (const auto& piece : judged.plan.pieces) {
        if (piece.piece->fabric == last) continue;
        last = piece.piece->fabric;
        if (piece.knit) out += knit_steps(*piece.knit, q.yarn);
        if (piece.woven) out += woven_steps(*piece.woven, q.yarn, judged.plan.article->spacing);
    }
    for (const auto& piece : judged.plan.pieces)
        out += step(
            fmt::format("{}: {} of {:.0f} cm2{}{}", piece.piece->name, words(piece.outline.shape),
                        area(piece.outline).si() * 1e4,
                        piece.piece->count > 1 ? fmt::format(", {} alike", piece.piece->count) : "",
                        fmt::format(" = {:.0f} m", in_metres(piece.metres.mid))));
    if (judged.plan.article->craft == Craft::knitted) out += figure(constants::joins_and_tails);
    if (judged.plan.article->loom == Loom::pins) out += figure(constants::pin_tails);
    return out + apart_steps(*judged.plan.article, q.yarn) + certainty_steps(judged.plan) +
           suitability_steps(judged.judgement) + not_shown();
}

std::string not_shown() {
    return step(
        "Not shown, beyond what stands above: how a fibre's behaviour follows from its kind and "
        "fineness, how a needle is chosen, what washing takes of cloth, how points are weighed, "
        "how far swatches are believed, the limits from which something is said at all, and what "
        "cautions, pictures and the standing among ordinary yarns stand on. Each has its mark in "
        "docs/constants.md or in the tables of "
        "catalog/tables.");
}

}  // namespace gristwright::cli
