#include "cli/commands/plan.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/for_whom.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/next.hpp"
#include "cli/output/place_words.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/shaping_words.hpp"
#include "cli/output/steps.hpp"
#include "cli/output/units_in_words.hpp"
#include "cli/output/why_not.hpp"
#include "cli/output/working.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/plan_asked.hpp"
#include "cli/roles.hpp"
#include "cli/warp_words.hpp"
#include "cli/yarns.hpp"
#include "engine/evidence/next_step.hpp"
#include "engine/project/order.hpp"
#include "engine/project/words.hpp"
#include "engine/suitability/reasons.hpp"

namespace gristwright::cli {
namespace {

const char* whose(double share) {
    return share >= 1 ? "" : share > 0 ? " (half of it this batch's)" : " (another yarn)";
}

std::string woven_line(const PlanPiece& p, const Units& units) {
    if (p.woven->by == Spaced::pins)
        return fmt::format("{} ends, {} picks; {}", p.panel.ends, p.panel.picks,
                           making_line(p, units));
    return fmt::format("{} ends of {}, {} picks; {}; warp {}{}, weft {}{}", p.panel.ends,
                       units.yarn(p.warp / p.panel.ends), p.panel.picks, making_line(p, units),
                       units.yarn(p.warp), whose(p.piece->warp_ours()), units.yarn(p.weft),
                       whose(p.piece->weft_ours()));
}

std::string piece_text(const PlanPiece& p, const Units& units) {
    std::string name = capital(p.piece->name);
    if (p.piece->count > 1) name += fmt::format(", {} alike", p.piece->count);
    if (p.ours.si() <= 0) name += " (another yarn)";
    auto out = "  " + heading(name) + "\n";
    const auto measure = one_measure(p.outline.shape)
                             ? units.size(p.outline.width)
                             : units.sizes(p.outline.width, p.outline.length);
    out += wrapped(
               fmt::format("{}, {}, {} finished", p.piece->fabric, words(p.outline.shape), measure),
               4) +
           "\n";
    const auto plain = p.edge_stitches > 0
                           ? fmt::format(" ({} of them plain, at the edges)", p.edge_stitches)
                           : "";
    if (p.knit)
        out += wrapped(fmt::format("{}{}, {}; {}", stitches_words(p), plain, rows_words(p),
                                   making_line(p, units, p.piece->on_smaller)),
                       4) +
               "\n";
    else
        out += wrapped(woven_line(p, units), 4) + "\n";
    return out + wrapped(fmt::format("{}, {}", units.yarn_range(p.metres), units.mass(p.mass)), 4) +
           "\n";
}

// Chance that the yarn reaches, over the sizes from smallest to largest.
std::string curve(const Plan& plan, const Units& units) {
    std::string out;
    const auto& t = *plan.article;
    for (int i = 0; i <= 4; ++i) {
        const auto size = metres(
            std::round((t.smallest + (t.largest - t.smallest) * (i / 4.0)).si() * 100) / 100);
        const double chance = plan.certainty_at(size);
        const auto bar = static_cast<std::size_t>(std::lround(30 * chance));
        out += fmt::format("  {:>8}  {} {}\n", units.size(size), padded(std::string(bar, '='), 30),
                           percent(chance));
        if (t.largest == t.smallest) break;
    }
    return out;
}

std::string costing(double points) {
    const auto whole = std::lround(points);
    return fmt::format("; costs {} {}", whole, whole == 1 ? "point" : "points");
}

// What the article wishes of the trait that it also needs.
const Factor* wished_too(const Needed& need, const Judgement& judged) {
    for (std::size_t f = 0; f < factor_count; ++f)
        if (const auto trait = trait_of(static_cast<FactorName>(f));
            trait && need.demand->trait == trait)
            return &judged.factor(static_cast<FactorName>(f));
    return nullptr;
}

// Needs that the yarn does not meet: each with what would meet it. `all`: apart from the wish for
// the same trait, which else is counted in.
std::string unmet(const Judgement& judged, const Question& q, bool all) {
    std::string out;
    for (const auto& need : judged.unmet) {
        if (need.cost < 1) continue;
        const auto* wish = all ? nullptr : wished_too(need, judged);
        auto line = need.demand->reason + costing(need.cost + (wish ? wish->cost : 0));
        if (!need.demand->remedy.empty())
            line += "; would serve: " + in_units(need.demand->remedy, q.units);
        out += labelled("-", line, 2) + "\n";
    }
    return out;
}

std::string reasons(const JudgedPlan& judged, const Question& q, bool all) {
    auto out = unmet(judged.judgement, q, all);
    for (std::size_t f = 0; f < factor_count; ++f) {
        const auto name = static_cast<FactorName>(f);
        const auto& factor = judged.judgement.factor(name);
        if (factor.weight == 0 ||
            (!all && (factor.cost < 1 || said_by_need(name, judged.judgement))))
            continue;
        auto line = sentence(name, judged.judgement, judged.plan, q.yarn);
        if (factor.cost >= 0.5) line += costing(factor.cost);
        const auto raise = remedy(name, judged.judgement, judged.plan);
        if (!raise.empty()) line += "; would help: " + raise;
        out += labelled("-", line, 2) + "\n";
    }
    return out;
}

std::string set_aside_text(const Plan& plan, const Question& q) {
    const auto aside = to_set_aside(plan, q.yarn);
    if (!aside) return "";
    return wrapped(fmt::format(
                       "Set aside {} for it, {} of the batch; most likely about {} are left.",
                       q.units.mass(aside->mass), percent(aside->share), q.units.yarn(plan.left())),
                   2) +
           "\n";
}

std::string next_evidence(const Plan& plan, const Question& q) {
    const auto then = size_after_sample(plan, q.yarn);
    if (!then) return "";
    const bool knitted = plan.article->craft == Craft::knitted;
    return wrapped(fmt::format("{} would let it grow from {} to about {} ({}).",
                               knitted ? "A washed and weighed swatch"
                                       : "A woven sample, measured in the heddle and finished,",
                               q.units.size(plan.size), q.units.size(*then), plan.article->measure),
                   2) +
           "\n";
}

std::string joins(const Plan& plan, const Question& q) {
    std::vector<std::string> names;
    for (const auto& skein : q.yarn.skeins) names.push_back(inert(skein.name));
    const auto turns = turns_in_words(plan, q.yarn);
    const auto said = ends_in_words(plan, skein_ends(plan, q.yarn), names, q.units);
    return (turns.empty() ? "" : wrapped(turns, 2) + "\n") +
           (said.empty() ? "" : wrapped("Joins: " + said, 2) + "\n");
}

std::string steps(const Plan& plan, const Question& q) {
    std::string out;
    int number = 0;
    for (const auto& step : steps_of(plan, q.units))
        out += labelled(fmt::format("{}.", ++number), step, 2) + "\n";
    return out;
}

std::string metres_text(const Plan& plan, const Question& q) {
    auto out =
        wrapped(fmt::format("Uses {}, {}; chance that the yarn does not run out {} ({} asked).",
                            q.units.yarn_range(plan.need), q.units.mass(plan.mass),
                            percent(plan.certainty), percent(plan.asked)),
                2) +
        "\n";
    out += other_yarn_text(plan, q);
    return out + set_aside_text(plan, q) + joins(plan, q) + next_evidence(plan, q);
}

// Where a loom stands in the way the yarn is not what fails.
std::string standing_text(const JudgedPlan& judged) {
    if (!judged.judgement.compared) return "";
    const auto& obstacles = judged.plan.obstacles;
    const bool stopped = std::any_of(obstacles.begin(), obstacles.end(), stops);
    return wrapped(fmt::format("{}erves it better than {} of ordinary handspun yarns would{}.",
                               stopped ? "The yarn itself s" : "S",
                               percent(judged.judgement.better_than),
                               stopped ? "; what is in the way is the loom" : ""),
                   0) +
           "\n";
}

std::string plan_text(const JudgedPlan& judged, const Question& q, bool why) {
    const auto& plan = judged.plan;
    const auto& t = *plan.article;
    auto out = wrapped(judged_in_words(judged), 0) + "\n";
    out += standing_text(judged);
    out += wrapped(capital(reach_line(plan, q.units)) + ".", 0) + "\n" + wrapped(t.about, 0) + "\n";
    if (!q.which_yarn.empty()) out += wrapped(capital(q.which_yarn) + ".", 0) + "\n";
    out += "\n" + heading("Yarn") + "\n" + metres_text(plan, q);
    out += "\n" + heading("How big? Chance that the yarn reaches") + "\n" + curve(plan, q.units);
    out += "\n" + heading("Pieces") + "\n";
    for (const auto* piece : pieces_as_worked(plan)) out += piece_text(*piece, q.units);
    out += warp_text(plan, q);
    out += "\n" + heading("Steps") + "\n" + steps(plan, q);
    const auto because = reasons(judged, q, why);
    if (!because.empty())
        out += "\n" + heading(why ? "Why, factor by factor" : "What counts against it") + "\n" +
               because;
    std::string stands;
    for (const auto obstacle : plan.obstacles) stands += labelled("-", words(obstacle), 2) + "\n";
    if (!stands.empty()) out += "\n" + heading("In the way") + "\n" + stands;
    std::string mind;
    for (const auto& said : cautions(plan, q)) mind += labelled("-", said, 2) + "\n";
    for (const auto& said : cautions_at_work(q.yarn, q.units, t.craft))
        mind += labelled("-", said, 2) + "\n";
    if (!mind.empty()) out += "\n" + heading("Mind") + "\n" + mind;
    if (!q.yarn.evidence.empty()) out += "\n" + stands_on(q.yarn);
    out += "\n" + labelled("Assumed:", joined(assumptions(q.yarn, q.units), "; "), 0) + "\n";
    if (const auto sharper = hints(q.yarn, plan.article->craft); !sharper.empty())
        out += labelled("Sharper:", sharper.front(), 0) + "\n";
    return out;
}

// The same on one side of paper.
std::string sheet_next(const Arguments& arguments) {
    const auto& name = arguments.words[0];
    const auto file = name.find_first_of("/ ") == std::string::npos ? name + ".html" : "sheet.html";
    std::vector<std::string> words{"sheet", name};
    for (const auto* option : {"size", "for", "as", "with"})
        if (arguments.has(option))
            words.insert(words.end(), {fmt::format("--{}", option), arguments.text(option)});
    words.insert(words.end(), {"--out", file});
    return next_line(words, arguments.words.size() > 1 ? arguments.words[1] : "", arguments);
}

std::string said_of_one(const Arguments& arguments, Question& q) {
    const auto [judged, sized] = plan_asked(arguments, arguments.words[0], q);
    if (arguments.has("why-not")) return why_not(judged, q);
    return (sized.empty() ? "" : wrapped(sized, 0) + "\n") +
           plan_text(judged, q, arguments.has("why")) + (q.working ? plan_working(judged, q) : "") +
           sheet_next(arguments);
}

Json json_of_one(const Arguments& arguments, Question& q) {
    const auto judged = plan_asked(arguments, arguments.words[0], q).judged;
    Json out{{"batch", to_json(q)}, {"plan", to_json(judged, q.yarn)}};
    out["plan"]["cautions"] = texts(cautions(judged.plan, q));
    return out;
}

// One after another: what is asked of all is asked of each by its number.
std::string said_of_each(const Arguments& arguments, const Question& q,
                         std::vector<Question>& yarns) {
    auto out = wrapped(batch_line(q), 0) + "\n";
    for (std::size_t y = 0; y < yarns.size(); ++y) {
        auto of_one = arguments;
        of_one.options["yarn"] = {fmt::format("{}", y + 1)};
        out += yarn_heading(q, y, 0) + said_of_one(of_one, yarns[y]);
    }
    return out;
}

Answer run_plan(const Arguments& arguments) {
    auto q =
        ask(arguments, arguments.words.size() > 1 ? arguments.words[1] : "", Skeins::each_if_asked);
    auto yarns = of_each_yarn(q);
    std::string said;
    if (q.json) {
        auto out = json_answer("plan");
        if (yarns.empty()) out.update(json_of_one(arguments, q));
        if (!yarns.empty()) out["batch"] = whole_to_json(q);
        for (auto& one : yarns) out["yarns"].push_back(json_of_one(arguments, one));
        said = dumped(out);
    } else {
        said = yarns.empty() ? said_of_one(arguments, q) : said_of_each(arguments, q, yarns);
    }
    return {said, joined(q.measured.notes, "\n")};
}

}  // namespace

Command plan_command() {
    return {
        "plan",
        "One article in full with this batch: size, gauge or sett, stitches and rows or ends "
        "and picks, metres, steps, reasons.",
        "TEMPLATE [BATCH.toml | SKEINS.csv]",
        1,
        2,
        together({{{"size", "130cm", "this size, not the largest that the metres cover"},
                   for_option,
                   {"why-not", "", "only what decides against it, and what would serve"},
                   {"why", "", "every factor of the suitability, not only what counts against"}},
                  role_options(),
                  plan_options(),
                  batch_options(),
                  answer_options()}),
        run_plan,
        "triangle-shawl heron.toml --why"};
}

}  // namespace gristwright::cli
