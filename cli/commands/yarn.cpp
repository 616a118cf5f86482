#include "cli/commands/yarn.hpp"

#include <fmt/core.h>

#include <cmath>

#include <nlohmann/json.hpp>

#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/next.hpp"
#include "cli/output/table.hpp"
#include "cli/output/working.hpp"
#include "cli/output/yarn_foot.hpp"
#include "cli/yarns.hpp"
#include "engine/cloth/knitting.hpp"
#include "engine/cloth/knitting_constants.hpp"
#include "engine/cloth/weaving.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"
#include "engine/yarn/softness.hpp"
#include "engine/yarn/squeezed.hpp"

namespace gristwright::cli {
namespace {

// The count systems of those units; every one if asked.
std::vector<std::string_view> systems_of(const Units& units, bool all) {
    std::vector<std::string_view> out;
    if (all) {
        for (const auto& system : count_systems()) out.push_back(system.name);
        return out;
    }
    if (!units.imperial()) out = {"metres per gram", "metres per 100 g", "tex"};
    if (units.imperial() || units.both())
        out.insert(out.end(), {"yards per pound", "worsted count", "woollen run"});
    return out;
}

std::string counts(const Question& q, bool all) {
    std::string out;
    const auto& grist = q.yarn.linear_density;
    for (const auto name : systems_of(q.units, all)) {
        const auto& system = count_system(name);
        const double count = count_of(grist.mid, system);
        out += fmt::format("  {:<20}{:>10.{}f}  ± {:.{}f}\n", name, count, count < 100 ? 2 : 0,
                           grist.margin90() * count, count < 100 ? 2 : 0);
    }
    return out;
}

std::string each_skein(const Question& q) {
    Table table({{""}, {"", true}, {"", true}, {"", true}, {"", true}});
    for (const auto& s : q.yarn.skeins)
        table.add({{"  " + std::string(first_bytes(inert(s.name), 40))},
                   {q.units.measured(s.length)},
                   {q.units.weighed(s.mass)},
                   {q.units.thickness(s.linear_density.mid)},
                   {fmt::format("± {:.1f} %", 100 * s.linear_density.margin90())}});
    return joined(table.lines(table_width()).rows, "");
}

std::string loft(const YarnProfile& yarn, const Units& units) {
    if (!yarn.wraps_measured)
        return "not known: wrap the yarn round a ruler and give --wraps 16wpi";
    auto out = fmt::format("{:.0f} % of the wrapped yarn is fibre; {} thick",
                           100 * yarn.packing.mid, units.small(yarn.laid_diameter));
    if (yarn.usual.high == 0) return out;
    const char* place = yarn.packing.mid < yarn.usual.low    ? "loftier than"
                        : yarn.packing.mid > yarn.usual.high ? "denser than"
                                                             : "as lofty as";
    return out + fmt::format("; {} {} yarns usually are", place,
                             yarn.usual.high <= constants::carded_packing.high
                                 ? "carded long-draw"
                                 : "combed short-draw");
}

std::string classes(const YarnProfile& yarn) {
    auto out = wrapped(capital(class_line(yarn)) + ".", 2) + "\n";
    if (!yarn.wraps_measured) return out;
    const auto same = yarn.class_by_grist.front().name == yarn.class_by_wraps.front().name &&
                      yarn.class_by_grist.size() == yarn.class_by_wraps.size();
    return out + (same ? "  The two agree.\n"
                       : wrapped("Trust the grist for length and mass, the wraps for gauge; setts "
                                 "go between the two.",
                                 2) +
                             "\n");
}

std::string behaviour(const YarnProfile& yarn) {
    std::string out;
    for (std::size_t t = 0; t < trait_count; ++t) {
        const auto& trait = yarn.traits[t];
        auto reasons = trait.reasons;
        reasons.resize(std::min<std::size_t>(3, reasons.size()));
        const auto left = fmt::format("  {:<14}{:.2f} ± {:.2f}  ", words(static_cast<TraitName>(t)),
                                      trait.value, margin90(trait.spread));
        out += labelled(left.substr(2), joined(reasons), 2) + "\n";
    }
    return out;
}

std::string prickle(const YarnProfile& yarn) {
    if (!yarn.fibre_diameter) return "";
    const auto grade = yarn.grade.empty() ? "" : ", wool grade " + yarn.grade;
    return wrapped(
               fmt::format("Next to the skin: {:.1f} micron{}; about {:.0f} % of fibres over 30.5 "
                           "micron, and prickle is felt above about {:.0f} %.",
                           in_microns(*yarn.fibre_diameter), grade, 100 * yarn.share_over_prickle,
                           100 * constants::felt_share),
               2) +
           "\n";
}

// Beyond that the wraps have lost their say, and nobody would knit what they give.
bool wraps_tell(const YarnProfile& yarn) {
    const double wpi = in_wraps_per_inch(yarn.laid_wraps.mid);
    return wpi >= constants::wraps_rule_from && wpi <= constants::wraps_rule_to;
}

bool yarn_disagrees(const KnitCloth& cloth, const YarnProfile& yarn) {
    return cloth.by_wraps.mid.si() > 0 && !cloth.from_swatch && wraps_tell(yarn) &&
           std::abs(cloth.by_wraps.mid / cloth.by_grist.mid - 1) > constants::gauges_apart;
}

std::string gauge(const Question& q, Firmness purpose, const char* name) {
    const KnitFabric plain;
    const auto cloth = knit_cloth(q.yarn, plain, purpose, q.measured.owned.needles);
    return fmt::format("  {:<12}{}, {} needles\n", name,
                       q.units.gauges(cloth.gauge.low(), cloth.gauge.high()),
                       q.units.needle(cloth.needle));
}

// Where the two readings of an ordinary cloth are far apart.
std::string gauge_doubt(const Question& q) {
    const KnitFabric plain;
    const auto cloth = knit_cloth(q.yarn, plain, Firmness::ordinary, q.measured.owned.needles);
    if (!yarn_disagrees(cloth, q.yarn)) return "";
    return wrapped(fmt::format("Of ordinary cloth the grist says {}, the wraps say {}.",
                               q.units.stitch_gauge(cloth.by_grist.mid),
                               q.units.stitch_gauge(cloth.by_wraps.mid)),
                   2) +
           "\n";
}

std::string sett(const Question& q, Spacing purpose, const char* name) {
    const Weave plain;
    const auto cloth = weave_cloth(q.yarn, plain, {purpose, Finish::light}, q.measured.owned);
    const auto share = cloth.wanted;
    auto out = fmt::format("  {:<12}{}", name,
                           q.units.setts(cloth.greatest * share.low, cloth.greatest * share.high));
    if (!q.measured.owned.heddles.empty())
        out += (cloth.within_reach ? "; of yours " : "; nearest of yours ") +
               q.units.dents(cloth.ends);
    return out + "\n";
}

// The rule that many weavers go by, beside ours.
std::string half_of_wraps(const Question& q) {
    const auto& yarn = q.yarn;
    if (!yarn.wraps_measured || yarn.wraps_packed) return "";
    const auto half = half_the_wraps(yarn.laid_wraps.mid);
    return fmt::format("  {:<12}{}, {:.0f} % of the greatest sett\n", "half wraps",
                       q.units.sett(half),
                       100 * (half / greatest_sett(yarn.packed_diameter, plain_weave)));
}

std::string grist_text(const Question& q, bool all) {
    return "\n" + heading("Grist (± holds 9 times in 10)") + "\n" + counts(q, all);
}

std::string skeins_text(const Question& q) {
    return "\n" + heading("Skeins") + "\n" + each_skein(q) +
           wrapped(capital(agreement_line(q.yarn.agreement)) + ".", 2) + "\n";
}

std::string loft_text(const Question& q) {
    return "\n" + heading("Loft") + "\n" + wrapped(loft(q.yarn, q.units), 2) + "\n";
}

std::string behaviour_text(const Question& q) {
    return "\n" + heading("Behaviour (0 to 1; our judgement, ± holds 9 times in 10)") + "\n" +
           behaviour(q.yarn) + prickle(q.yarn);
}

std::string cloth_text(const Question& q) {
    auto out = "\n" +
               heading(q.yarn.washed_gauge || q.yarn.evidence.gauge
                           ? "Knitted, stocking stitch, from your washed swatch"
                           : "Knitted, stocking stitch, washed, before any swatch") +
               "\n";
    out += gauge(q, Firmness::drapey, "drapey") + gauge(q, Firmness::ordinary, "ordinary") +
           gauge(q, Firmness::firm, "firm") + gauge_doubt(q);
    return out + "\n" + heading("Woven, plain weave") + "\n" +
           sett(q, Spacing::open, "open shawl") + sett(q, Spacing::scarf, "scarf") +
           sett(q, Spacing::general, "general") + half_of_wraps(q);
}

// Each by itself: a mean of unlike yarns is the profile of none of them.
std::string each_yarn(const Question& q, const std::vector<Question>& yarns, bool all) {
    std::string out, behaves;
    std::vector<YarnFoot> feet;
    for (const auto& one : yarns) feet.push_back(foot_of(one));
    const auto in_common = taken_in_common(q, feet);
    for (std::size_t y = 0; y < yarns.size(); ++y) {
        const auto& one = yarns[y];
        out += yarn_heading(q, y, 2) + grist_text(one, all) + loft_text(one);
        const auto next = behaviour_text(one);
        out += (next == behaves ? "\nIt behaves as the one before.\n" : next) + cloth_text(one);
        behaves = next;
        if (const auto foot = foot_text(feet[y], Of::one_of_several); !foot.empty())
            out += "\n" + foot;
    }
    return out + "\n" + foot_text(in_common, Of::all_of_them);
}

std::string yarn_text(const Question& q, const std::vector<Question>& yarns, bool all) {
    const auto head = wrapped(batch_line(q), 0) + "\n";
    if (!yarns.empty()) return head + skeins_text(q) + each_yarn(q, yarns, all);
    return head + classes(q.yarn) + grist_text(q, all) + skeins_text(q) + loft_text(q) +
           behaviour_text(q) + cloth_text(q) + "\n" + foot_text(foot_of(q), Of::the_yarn);
}

std::string working(const Question& q, const std::vector<Question>& yarns) {
    if (yarns.empty()) return yarn_working(q);
    std::string out;
    for (std::size_t y = 0; y < yarns.size(); ++y)
        out += yarn_heading(q, y, 0) + yarn_working(yarns[y]);
    return out;
}

Answer run_yarn(const Arguments& arguments) {
    const auto batch = arguments.words.empty() ? "" : arguments.words[0];
    const auto q = ask(arguments, batch, Skeins::all);
    const auto notes = joined(q.measured.notes, "\n");
    const auto yarns = of_each_yarn(q);
    if (!q.json) {
        auto then = arguments;
        if (!yarns.empty()) then.options["yarn"] = {"all"};
        return {yarn_text(q, yarns, arguments.has("counts")) +
                    (q.working ? working(q, yarns) : "") + "\n" + next_line({"makes"}, batch, then),
                notes};
    }
    auto out = json_answer("yarn");
    out["batch"] = whole_to_json(q);
    for (const auto& one : yarns) out["yarns"].push_back(to_json(one));
    return {dumped(out), notes};
}

}  // namespace

Command yarn_command() {
    return {"yarn",
            "What yarn a batch is: grist with its range, whether the skeins are one yarn, loft, "
            "weight class twice, how it behaves, gauges and setts to begin sampling from.",
            "[BATCH.toml | SKEINS.csv]",
            0,
            1,
            together({{{"counts", "", "every count system, not the usual six"}},
                      batch_options(),
                      answer_options()}),
            run_yarn,
            "heron.toml --counts"};
}

}  // namespace gristwright::cli
