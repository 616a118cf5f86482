#include "cli/commands/yarn.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "engine/cloth/loop.hpp"
#include "engine/cloth/sett.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/agreement.hpp"
#include "engine/yarn/count.hpp"
#include "engine/yarn/grist_margin.hpp"
#include "engine/yarn/loft.hpp"
#include "engine/yarn/softness.hpp"

namespace gristwright::cli {
namespace {

Preparation preparation_named(const std::string& word) {
    if (word.empty()) return Preparation::unknown;
    if (word == "carded") return Preparation::carded;
    if (word == "combed") return Preparation::combed;
    throw std::invalid_argument("--prep is carded or combed, not '" + word + "'");
}

Draw draw_named(const std::string& word) {
    if (word.empty()) return Draw::unknown;
    if (word == "long") return Draw::long_draw;
    if (word == "short") return Draw::short_draw;
    throw std::invalid_argument("--draw is long or short, not '" + word + "'");
}

// A skein given with a mass of more grams than metres is rope or a slip of the pen.
void question(const std::string& text, const Skein& skein) {
    if (in_grams(skein.mass) > in_metres(skein.length))
        throw std::invalid_argument(
            fmt::format("'{}' would be rope: are the length and the mass swapped?", text));
}

Batch batch_of(const YarnRequest& request) {
    Batch batch;
    Mass finest = kilograms(1);
    Length ruler = metres(1000);
    for (const auto& text : request.skeins) {
        const auto [length, mass] = read_skein(text);
        const auto name = fmt::format("skein {}", batch.skeins.size() + 1);
        batch.skeins.push_back({name, length.value, mass.value});
        question(text, batch.skeins.back());
        finest = std::min(finest, mass.step);
        ruler = std::min(ruler, length.step);
    }
    batch.measuring.scale_step = request.scale.empty() ? finest : read_mass(request.scale).value;
    batch.measuring.length_step = ruler;
    if (!request.wraps.empty()) batch.wraps = WrapsReading{read_wraps(request.wraps)};
    batch.preparation = preparation_named(request.preparation);
    batch.draw = draw_named(request.draw);
    return batch;
}

struct Whole {
    Length length;
    Mass mass;
    Estimate<LinearDensity> grist;
};

Whole whole_of(const Batch& batch) {
    Skein all;
    for (const auto& skein : batch.skeins) all.length += skein.length, all.mass += skein.mass;
    return {
        all.length, all.mass, {all.mass / all.length, grist_margin(all, batch.measuring).whole()}};
}

std::string range(double low, double high, const char* unit) {
    return fmt::format("{:.0f} to {:.0f} {}", low, high, unit);
}

std::string counts(const Whole& whole) {
    std::string out;
    for (const char* name : {"metres per gram", "yards per pound", "tex", "metric count",
                             "worsted count", "metres per 100 g"}) {
        const auto& system = count_system(name);
        const double count = count_of(whole.grist.mid, system);
        out += fmt::format("  {:<18}{:>10.{}f}  ± {:.{}f}\n", name, count, count < 100 ? 2 : 0,
                           1.645 * whole.grist.spread * count, count < 100 ? 2 : 0);
    }
    return out;
}

std::string each_skein(const Batch& batch) {
    std::string out;
    for (const auto& skein : batch.skeins)
        out += fmt::format("  {:<10}{:>7.1f} m {:>7.1f} g {:>8.1f} tex  ± {:.1f} %\n", skein.name,
                           in_metres(skein.length), in_grams(skein.mass),
                           in_tex(skein.mass / skein.length),
                           164.5 * grist_margin(skein, batch.measuring).whole());
    return out;
}

std::string agreement(const Batch& batch) {
    std::vector<GristReading> readings;
    for (const auto& skein : batch.skeins)
        readings.push_back({std::log(in_tex(skein.mass / skein.length)),
                            grist_margin(skein, batch.measuring).own()});
    const auto found = agree(readings);
    const auto seen = fmt::format("the widest pair differs by {:.1f} %", 100 * found.widest);
    switch (found.answer) {
        case SameYarn::only_one_skein:
            return "one skein, nothing to compare";
        case SameYarn::differ:
            return "the skeins differ beyond measuring: " + seen;
        case SameYarn::same:
            return "one yarn: the same within 10 % in grist; " + seen;
        default:
            return fmt::format("this scale cannot tell: {}, and under {:.0f} % it shows nothing",
                               seen, 100 * found.smallest_shown);
    }
}

std::string loft(const Batch& batch, const Whole& whole, Density fibre) {
    if (!batch.wraps) return "not known: wrap the yarn round a ruler and give --wraps 16wpi";
    const double packing = packing_from_wraps(whole.grist.mid, batch.wraps->count, fibre);
    if (packing > closest_packing)
        throw std::invalid_argument(
            "these wraps would need more fibre than fits the space: check --wraps and the skeins");
    auto out = fmt::format("{:.0f} % of the wrapped yarn is fibre (laid side by side, assumed)",
                           100 * packing);
    const auto band = usual_packing(batch.preparation, batch.draw);
    if (band.high == 0) return out;
    const char* place = packing < band.low    ? "loftier than"
                        : packing > band.high ? "denser than"
                                              : "as lofty as";
    return out + fmt::format(";\n  {} {} yarns usually are", place,
                             batch.preparation == Preparation::carded ? "carded long-draw"
                                                                      : "combed short-draw");
}

std::string gauge_for(const Batch& batch, const Whole& whole, Firmness purpose) {
    auto gauge = gauge_by_grist(whole.grist.mid, purpose);
    if (batch.wraps)
        gauge =
            weigh(gauge, gauge_by_wraps(batch.wraps->count, wraps_margin(*batch.wraps), purpose));
    const auto needle = needle_for(loop_from_stitches(gauge.mid, Relaxation::full));
    return range(in_stitches_per_10cm(gauge.low()), in_stitches_per_10cm(gauge.high()),
                 "st / 10 cm") +
           fmt::format(", needle near {:.1f} mm", in_millimetres(needle));
}

std::string sett_for(const Batch& batch, const Whole& whole, Spacing purpose) {
    const auto spun = batch.preparation == Preparation::combed ? SpunAs::worsted : SpunAs::woollen;
    const auto most =
        greatest_sett(packed_diameter(whole.grist.mid, ashenhurst(spun)), plain_weave);
    const auto share = share_band(purpose);
    return range(in_ends_per_10cm(most * share.low), in_ends_per_10cm(most * share.high),
                 "ends / 10 cm") +
           fmt::format(" ({:.0f} to {:.0f} epi)", in_ends_per_inch(most * share.low),
                       in_ends_per_inch(most * share.high));
}

std::string prickle(const std::string& micron) {
    const auto [low, high] = read_micron_range(micron);
    const double share = share_over_prickle((low + high) / 2);
    return fmt::format(
        "about {:.0f} % of fibres over 30.5 micron; prickle is felt above about {:.0f} %",
        100 * share, 100 * prickle_felt_above);
}

}  // namespace

std::string yarn_answer(const YarnRequest& request) {
    const auto batch = batch_of(request);
    const auto whole = whole_of(batch);
    const auto wool = FibrePart{}.density;
    auto out = fmt::format("{:.0f} m, {:.1f} g in {} skein{}\n\nGrist (± holds 9 times in 10)\n",
                           in_metres(whole.length), in_grams(whole.mass), batch.skeins.size(),
                           batch.skeins.size() == 1 ? "" : "s");
    out += counts(whole) + "\nSkeins\n" + each_skein(batch) + "  " + agreement(batch) + "\n";
    out += "\nLoft\n  " + loft(batch, whole, wool) + "\n";
    if (!request.micron.empty()) out += "\nNext to the skin\n  " + prickle(request.micron) + "\n";
    out += "\nKnitted, stocking stitch, washed, before any swatch\n";
    out += "  ordinary cloth    " + gauge_for(batch, whole, Firmness::ordinary) + "\n";
    out += "  drapey cloth      " + gauge_for(batch, whole, Firmness::drapey) + "\n";
    out += "\nWoven, plain weave\n";
    out += "  scarf             " + sett_for(batch, whole, Spacing::scarf) + "\n";
    out += "  open shawl        " + sett_for(batch, whole, Spacing::open) + "\n";
    out += fmt::format(
        "\nAssumed: fibre of wool's density; skeins in one length state; scale read to "
        "{:.2g} g.\nSample and wash before you trust a gauge or a sett.\n",
        in_grams(batch.measuring.scale_step));
    return out;
}

}  // namespace gristwright::cli
