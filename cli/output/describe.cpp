#include "cli/output/describe.hpp"

#include <fmt/core.h>

#include <cmath>

#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/units_in_words.hpp"
#include "cli/output/yarn_words.hpp"
#include "engine/cloth/knitting_constants.hpp"
#include "engine/cloth/spacing_words.hpp"
#include "engine/cloth/weaving_constants.hpp"
#include "engine/project/by_cloth.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"
#include "engine/yarn/softness.hpp"

namespace gristwright::cli {
namespace {

std::string class_names(const std::vector<WeightClass>& classes) {
    std::vector<std::string> names;
    for (const auto& c : classes) names.push_back(c.name);
    return joined(names, " or ");
}

std::string size_line(const Plan& plan, const Units& units) {
    const auto& t = *plan.article;
    if (plan.reach == Reach::short_of)
        return fmt::format("short by {} for {} {}", units.yarn(plan.short_by), t.measure,
                           units.size(plan.size));
    const auto size = fmt::format("{} {}", t.measure, units.size(plan.size));
    if (plan.reach == Reach::enough && t.fitted && plan.covered > plan.size)
        return fmt::format("enough: {} (up to {} is covered)", size, units.size(plan.covered));
    if (plan.reach == Reach::enough) return fmt::format("enough: {}", size);
    return fmt::format("enough if smaller: {} (ideal {})", size, units.size(t.ideal));
}

}  // namespace

JudgedPlan judged_plan(const Template& article, const Question& q) {
    return judged_plan(article, q.yarn, q.catalogue->fabrics, q.measured.owned, q.request);
}

std::string batch_line(const Question& q) {
    const auto grist = q.yarn.linear_density.mid;
    const auto count = q.yarn.skeins.size();
    const auto& name = q.measured.batch.name;
    const auto yarns = q.yarn.agreement.yarns.size();
    return fmt::format("{}: {}, {} in {} skein{}; {}", name.empty() ? "Your batch" : inert(name),
                       q.units.yarn(q.yarn.length.mid), q.units.mass(q.yarn.mass), count,
                       count == 1 ? "" : "s",
                       yarns > 1 ? fmt::format("{} unlike yarns", yarns) : q.units.grist(grist)) +
           (q.which_yarn.empty() ? "" : ". " + capital(q.which_yarn));
}

std::string class_line(const YarnProfile& yarn) {
    auto out = class_names(yarn.class_by_grist) + " by its grist";
    if (yarn.wraps_measured) out += ", " + class_names(yarn.class_by_wraps) + " by its wraps";
    return out;
}

std::string agreement_line(const Agreement& found) {
    const auto seen = fmt::format("the widest pair differs by {:.1f} %", 100 * found.widest);
    switch (found.answer) {
        case SameYarn::only_one_skein:
            return "one skein, nothing to compare";
        case SameYarn::differ:
            if (found.of_several_kinds)
                return fmt::format("{} yarns, by what the skeins say of themselves: {} in grist",
                                   found.yarns.size(), seen);
            return fmt::format("{} yarns: {}, more than alternating hides", found.yarns.size(),
                               seen);
        case SameYarn::alternate:
            return "one yarn if its skeins are alternated: " + seen;
        case SameYarn::same:
            return fmt::format("one yarn, {}within 10 % in grist: {}",
                               found.widest > constants::alike_grist ? "nearly all " : "", seen);
        case SameYarn::states_differ:
            return "measured in different states, so not compared";
        case SameYarn::cannot_tell:
            break;
    }
    return fmt::format(
        "this scale cannot tell whether they are one yarn: {}, and under {:.0f} % "
        "it shows nothing",
        seen, 100 * found.smallest_shown);
}

std::string percent(double share) {
    const double value = 100 * share;
    if (value >= 99.5 && value < 99.95) return fmt::format("{:.1f} %", value);
    if (value >= 99.95) return "over 99.9 %";
    return value <= 0.5 ? "under 1 %" : fmt::format("{:.0f} %", value);
}

std::string needle_words(Length known, const Units& units) {
    return known.si() > 0 ? units.needle(known) : "your swatch's";
}

std::string making_line(const PlanPiece& piece, const Units& units, bool smaller) {
    return by_cloth(
        piece,
        [&](const KnitCloth& k) {
            const auto needle = needle_words(needle_known(k), units);
            return fmt::format(
                "{}, {}", units.gauge(k.stitches, k.rows),
                smaller ? "needles one or two sizes smaller than " + needle : needle + " needles");
        },
        [&](const WovenCloth& w) {
            if (draws_itself_in(*w.weave))
                return fmt::format("drawn in by its weft to {}, {} wide", units.sett(w.ends),
                                   units.size(piece.panel.reed_width));
            if (w.by == Spaced::pins)
                return fmt::format("{} ({:.0f} % of the greatest sett)", spacing_words(w),
                                   100 * w.share);
            const auto reed = piece.panel.reed_width;
            return fmt::format("{}, {:.0f} % of the greatest sett; {} wide in it, {} off the loom",
                               spacing_words(w), 100 * w.share, units.size(reed),
                               units.size(reed * (1 - w.drawn_in.mid)));
        });
}

std::string reach_line(const Plan& plan, const Units& units) {
    const auto& t = *plan.article;
    constexpr double rounding = 0.01;
    if (plan.size >= t.smallest * (1 - rounding) && plan.size <= t.largest * (1 + rounding))
        return size_line(plan, units);
    return fmt::format("{}; meant for {} to {}", size_line(plan, units), units.size(t.smallest),
                       units.size(t.largest));
}

std::string stands_on(const YarnProfile& yarn) {
    if (yarn.evidence.empty()) return "";
    return labelled("Stands on:", joined(standings(yarn.evidence), "; "), 0) + "\n";
}

std::vector<Length> lengths_of(const YarnProfile& yarn) {
    std::vector<Length> out;
    for (const auto& skein : yarn.skeins) out.push_back(skein.length);
    return out;
}

// What lies on the cloth without crossing, where it is long enough to catch.
std::string long_float_in(const PlanPiece& piece, const Units& units) {
    return by_cloth(
        piece,
        [&](const KnitCloth& k) -> std::string {
            const auto reach = longest_strand(k);
            if (in_millimetres(reach) <= constants::long_strand) return "";
            return fmt::format(
                "{}: strands of {} behind the cloth catch on fingers: take "
                "each up behind a stitch half way",
                piece.piece->name, units.span(reach));
        },
        [&](const WovenCloth& w) -> std::string {
            const auto reach = longest_float(w);
            if (in_millimetres(reach) <= constants::long_float) return "";
            return fmt::format(
                "{}: floats of up to {} lie on {} at this sett and catch on rings and "
                "buttons: set it closer, or keep it where nothing rubs",
                piece.piece->name, units.span(reach), w.weave->name);
        });
}

std::vector<std::string> own_cautions(const Plan& plan, const YarnProfile& yarn,
                                      const Units& units) {
    std::vector<std::string> out;
    for (const auto& said : plan.article->cautions) out.push_back(in_units(said, units));
    for (const auto& piece : plan.pieces)
        if (auto said = long_float_in(piece, units); !said.empty()) out.push_back(std::move(said));
    if (plan.article->touches == Touches::skin) {
        if (yarn.fibre_diameter && yarn.share_over_prickle > 2 * constants::felt_share)
            out.push_back(fmt::format(
                "about {:.0f} % of the fibre is thick enough to prickle; ask the wearer, and about "
                "fibre allergies too",
                100 * yarn.share_over_prickle));
    }
    return out;
}

std::vector<std::string> cautions(const Plan& plan, const Question& q) {
    auto out = own_cautions(plan, q.yarn, q.units);
    for (const auto& said : whole(cautions_on(q, {plan.article.get()})))
        if (std::find(out.begin(), out.end(), said) == out.end()) out.push_back(said);
    return out;
}

}  // namespace gristwright::cli
