#include "cli/output/yarn_words.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

// "±20 % becomes ±12 %", of a verb in the number of what narrows.
std::string narrows(const char* before, const Hint& hint, const char* becomes) {
    return fmt::format("{} ±{:.0f} % {} ±{:.0f} %", before, 100 * margin90(hint.before), becomes,
                       100 * margin90(hint.after));
}

std::string in_other_batches(std::size_t count) {
    return fmt::format("{} other batch{}", count, count == 1 ? "" : "es");
}

const char* seen_words(Seen what) {
    switch (what) {
        case Seen::gauge:
            return "the gauge";
        case Seen::rows_for_stitches:
            return "the count of rows for these stitches";
        case Seen::yarn_for_area:
            return "the swatch's yarn for its area";
        case Seen::width_kept:
            return "the width kept";
        case Seen::length_kept:
            break;
    }
    return "the length kept";
}

}  // namespace

std::string grist_words(const Estimate<LinearDensity>& grist, std::string_view system,
                        int decimals) {
    const auto& s = count_system(system);
    const double a = count_of(grist.low(), s), b = count_of(grist.high(), s);
    return fmt::format("{:.{}f} {} ({:.{}f} to {:.{}f})", count_of(grist.mid, s), decimals,
                       s.symbol, std::min(a, b), decimals, std::max(a, b), decimals);
}

std::string words(const Assumption& assumption, const Units& units) {
    switch (assumption.what) {
        case Assumed::lengths_washed:
            return "lengths taken on washed, rested skeins";
        case Assumed::wool:
            return "fibre not given: wool is taken, its thickness left open";
        case Assumed::own_fibre_is_wool:
            return "your own fibre is wool";
        case Assumed::preparation_between:
            return "preparation not given: between carded and combed";
        case Assumed::draw_between:
            return "draw not given: between long and short";
        case Assumed::plies_between:
            return "plies not given: between singles and three-ply";
        case Assumed::twist_ordinary:
            return "twist not measured: an ordinary amount";
        case Assumed::scale_step:
            return fmt::format("scale read to {}", units.step(assumption.step));
        case Assumed::wraps_from_grist:
            return fmt::format("no wraps given: about {:.0f} wpi guessed from the grist",
                               in_wraps_per_inch(assumption.wraps));
        case Assumed::wraps_laid:
            return "wraps were counted side by side, not packed tight";
    }
    return "";
}

std::string words(const Hint& hint) {
    switch (hint.take) {
        case Measurement::swatch:
            return "knit and wash a swatch, count a gauge: " +
                   narrows("yarn for plain cloth within", hint, "becomes");
        case Measurement::wraps:
            return "wrap the yarn round a ruler: " + narrows("the needle for it", hint, "becomes");
        case Measurement::washed_lengths:
            return "wash, dry and measure the skeins again: " + narrows("lengths", hint, "become");
        case Measurement::finer_scale:
            return fmt::format("weigh on a finer scale: of {} alone ±{:.1f} % comes from the scale",
                               hint.skein, 100 * margin90(hint.before));
        case Measurement::ply_twist:
            return "count the plied turns over a ruler: definition, wear and warp fitness firm up";
        case Measurement::fibre:
            return "name the fibre or its micron: softness and wear firm up";
    }
    return "";
}

std::string words(const MakeUp& made) {
    std::string out;
    const auto add = [&](const std::string& word) { out += (out.empty() ? "" : ", ") + word; };
    if (made.preparation != Preparation::unknown)
        add(made.preparation == Preparation::carded ? "carded" : "combed");
    if (made.draw != Draw::unknown) add(made.draw == Draw::long_draw ? "long draw" : "short draw");
    if (made.plies > 0) add(made.plies == 1 ? "singles" : fmt::format("{}-ply", made.plies));
    if (!made.fibre.empty()) add(made.fibre);
    return out;
}

std::string habit_words(const Estimate<double>& habit) {
    const double percent = std::round(100 * (habit.mid - 1));
    if (percent == 0) return "as the table says";
    return fmt::format("{:.0f} % {} than the table", std::abs(percent),
                       percent > 0 ? "tighter" : "looser");
}

std::string words(const Standing& standing, const Evidence& known) {
    switch (standing.on) {
        case Basis::knitted_swatch:
            return fmt::format("a {}{} swatch in {}", standing.washed ? "washed" : "not yet washed",
                               standing.weighed ? " and weighed" : "", standing.fabric);
        case Basis::woven_sample:
            return "a woven sample, measured in the heddle and finished";
        case Basis::habit:
            return fmt::format("your swatches in {}, which come out {}",
                               in_other_batches(standing.batches),
                               habit_words(known.habit.value_or(Estimate<double>{1, 0})));
        case Basis::looks_alike:
            break;
    }
    return fmt::format("looks rated in {} made up alike ({})", in_other_batches(standing.batches),
                       words(standing.made));
}

std::string words(const Contradiction& seen) {
    if (seen.what == Seen::yarn_for_area && 1 + seen.by < constants::least_in_a_stitch)
        return fmt::format(
            "the swatch's yarn for its area is {:.0f} % less than this yarn lets expect, too "
            "little "
            "for the stitches counted, so its mass is not used: weigh and measure it again, or say "
            "--insist",
            -100 * seen.by);
    return fmt::format(
        "{} is {:.0f} % {} than this yarn lets expect: is it this yarn, counted and measured as "
        "typed?",
        seen_words(seen.what), 100 * std::abs(seen.by), seen.by > 0 ? "more" : "less");
}

std::string words(const UnlikelyMeasure& doubt, const Units& units) {
    if (doubt.of == UnlikelyMeasure::Of::wraps)
        return fmt::format(
            "{:.0f} wraps per inch laid side by side at this grist means {:.0f} % fibre; {}",
            in_wraps_per_inch(doubt.wraps), 100 * doubt.fibre,
            doubt.slipped ? "were the wraps packed tight? then say so"
                          : "is a length or a mass wrong?");
    return fmt::format("{}: {} weighing {} is a yarn of {}; are the {}?", doubt.name,
                       units.yarn(doubt.length), units.weighed(doubt.mass),
                       units.thickness(doubt.mass / doubt.length),
                       doubt.slipped ? "length and the mass swapped" : "units right");
}

std::string words(const FarGauge& far, const Units& units) {
    return fmt::format(
        "{} is far {} than this yarn is knitted at, about {} in stocking stitch: is it counted "
        "over that width, in stocking stitch, and of this yarn?",
        units.stitch_gauge(far.counted), far.counted < far.usual ? "looser" : "tighter",
        units.stitch_gauge(far.usual));
}

static std::string lively_singles(Craft craft) {
    return craft == Craft::knitted ? "singles with live twist lean stitches"
                                   : "singles with live twist tangle as warp";
}

std::string words(const YarnCaution& caution, const YarnProfile& yarn, const Units& units) {
    switch (caution.what) {
        case Beware::insisted:
            return "you insisted: " + words(caution.doubt, units);
        case Beware::states_differ:
            return "skeins measured in different states (reel, rested, washed) are not compared";
        case Beware::several_yarns:
            return fmt::format(
                "the skeins are {} yarns, too unlike to alternate: swatch and plan each by itself",
                yarn.agreement.yarns.size());
        case Beware::alternate:
            return "the skeins differ in grist: alternate them every two rows, or every few picks";
        case Beware::felts:
            return "this fibre felts easily: wash cool, without rubbing";
        case Beware::live_twist:
            return "live twist: cloth of it leans or cockles; swatch and wash it";
        case Beware::plied_z:
            return "plied Z: some ways of knitting untwist it, and most crochet tightens it; "
                   "swatch first";
        case Beware::chain_plied:
            return "chain-plied: secure the end, one cut loop can run";
        case Beware::lively_singles:
            return "singles with live twist lean stitches and tangle as warp";
        case Beware::two_strands:
            break;
    }
    return caution.said +
           ": lengths here are of two strands as one, and each takes two of the yarn";
}

bool of_the_whole_batch(const YarnCaution& caution) {
    return caution.what == Beware::states_differ || caution.what == Beware::several_yarns;
}

std::vector<std::string> standings(const Evidence& known) {
    std::vector<std::string> out;
    for (const auto& one : known.stands_on) out.push_back(words(one, known));
    return out;
}

std::vector<std::string> questions(const Evidence& known) {
    std::vector<std::string> out;
    for (const auto& one : known.questions) out.push_back(words(one));
    return out;
}

std::vector<std::string> yarn_cautions(const YarnProfile& yarn, const Units& units) {
    std::vector<std::string> out;
    for (const auto& one : yarn.cautions) out.push_back(words(one, yarn, units));
    for (auto& one : questions(yarn.evidence)) out.push_back(std::move(one));
    return out;
}

std::vector<std::string> cautions_at_work(const YarnProfile& yarn, const Units& units,
                                          std::optional<Craft> craft) {
    std::vector<std::string> out;
    for (const auto& one : yarn.cautions) {
        if (one.what == Beware::felts) continue;
        out.push_back(one.what == Beware::lively_singles && craft ? lively_singles(*craft)
                                                                  : words(one, yarn, units));
    }
    for (auto& one : questions(yarn.evidence)) out.push_back(std::move(one));
    return out;
}

std::vector<std::string> assumptions(const YarnProfile& yarn, const Units& units) {
    std::vector<std::string> out;
    for (const auto& one : yarn.assumed) out.push_back(words(one, units));
    return out;
}

std::vector<std::string> hints(const YarnProfile& yarn, std::optional<Craft> craft) {
    std::vector<std::string> out;
    for (const auto& hint : what_sharpens(yarn))
        if (craft != Craft::woven || hint.take != Measurement::swatch) out.push_back(words(hint));
    return out;
}

}  // namespace gristwright::cli
