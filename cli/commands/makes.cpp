#include "cli/commands/makes.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

#include "cli/for_whom.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/next.hpp"
#include "cli/output/ranked_lines.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/working.hpp"
#include "cli/output/yarn_foot.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/ranking.hpp"
#include "cli/roles.hpp"
#include "cli/yarns.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t usual_each = 6;  // of each part, unless --all
constexpr std::size_t all_of_them = 1000;

std::string counted(int number) {
    static constexpr std::array<const char*, 10> in_words{"none", "one", "two",   "three", "four",
                                                          "five", "six", "seven", "eight", "nine"};
    const auto n = static_cast<std::size_t>(number);
    return n < in_words.size() ? in_words[n] : fmt::format("{}", number);
}

std::string for_and_against(const JudgedPlan& judged, const YarnProfile& yarn) {
    auto pro = said_in_favour(judged.judgement, yarn);
    auto con = said_against(judged.judgement, judged.plan, yarn);
    pro.resize(std::min<std::size_t>(pro.size(), 3));
    con.resize(std::min<std::size_t>(con.size(), 3));
    std::string out;
    if (!pro.empty()) out += labelled("for:", joined(pro), 5) + "\n";
    if (!con.empty()) out += labelled("against:", joined(con), 5) + "\n";
    return out;
}

// "about 40 m left", or how many more of it the metres make.
std::string left_over(const Plan& plan, const Units& units) {
    const int times = times_over(plan);
    const auto left = fmt::format("about {} left", units.yarn(plan.left()));
    if (times < 2 || plan.article->sample) return left;
    return fmt::format("{}, enough for {}", left, counted(times));
}

std::string entry(const JudgedPlan& judged, const Question& q) {
    const auto& plan = judged.plan;
    auto out = fmt::format(
        "{:>3.0f}  {}  {}\n", judged.judgement.score,
        heading(
            padded(fmt::format("{} ({})", plan.article->title, words(plan.article->craft)), 42)),
        words(serves(judged.judgement.score)));
    out += wrapped(fmt::format("{}; uses {}, {}", reach_line(plan, q.units),
                               q.units.yarn_range(plan.need), left_over(plan, q.units)),
                   5) +
           "\n";
    out += wrapped(making_line(plan.pieces.front(), q.units), 5) + "\n";
    return out + for_and_against(judged, q.yarn);
}

std::string part(const std::string& title, const std::vector<JudgedPlan>& plans, std::size_t most,
                 const Question& q) {
    if (plans.empty()) return "";
    auto out = "\n" + heading(title) + "\n";
    for (std::size_t i = 0; i < std::min(most, plans.size()); ++i) out += entry(plans[i], q);
    if (plans.size() > most)
        out += fmt::format("     and {} more: --all lists them\n", plans.size() - most);
    return out;
}

// By reason, so that each is said once: "does not felt: fulled scarf (woven), fulled bag (woven)".
std::string not_for_this_yarn(const std::vector<JudgedPlan>& plans, const Question& q,
                              std::size_t most) {
    if (plans.empty()) return "";
    auto out = "\n" + heading("Wasted on it, or does not serve") + "\n";
    for (const auto& [why, articles] : by_reason(plans, q.yarn)) {
        std::vector<std::string> titles;
        for (std::size_t i = 0; i < std::min(most, articles.size()); ++i)
            titles.push_back(fmt::format("{} ({})", articles[i]->title, words(articles[i]->craft)));
        if (articles.size() > most)
            titles.push_back(fmt::format("and {} more", articles.size() - most));
        out += labelled("-", why + ": " + joined(titles), 2) + "\n";
    }
    return out;
}

std::string set_text(const BestSet& set, const Question& q) {
    if (set.members.size() < 2) return "";
    std::vector<std::string> said;
    for (const auto& m : set.members)
        said.push_back(fmt::format("{} ({}), {} {}, {}", m.article->title, words(m.article->craft),
                                   m.article->measure, q.units.size(m.size), q.units.yarn(m.need)));
    return "\n" +
           heading(set.alone >= set.worth ? "Or a set, instead of one article"
                                          : "The set that puts most of the batch to good use") +
           "\n" + wrapped(joined(said, "; "), 5) + "\n" +
           wrapped(
               fmt::format("together {} of {}, chance that it reaches {}", q.units.yarn(set.need),
                           q.units.yarn(q.yarn.length.mid), percent(set.certainty)),
               5) +
           "\n";
}

// The articles of these parts, the first of each.
std::vector<const Template*> shown(const Ranked& ranked, std::size_t most) {
    std::vector<const Template*> out;
    for (const auto* part : {&ranked.best, &ranked.also, &ranked.samples})
        for (std::size_t i = 0; i < std::min(most, part->size()); ++i)
            out.push_back((*part)[i].plan.article.get());
    return out;
}

// The craft of all that it is for, where that is one: a batch for the loom is told of no swatch.
std::optional<Craft> craft_of(const std::vector<JudgedPlan>& best) {
    if (best.empty()) return {};
    const auto craft = best.front().plan.article->craft;
    const bool one = std::all_of(best.begin(), best.end(), [&](const JudgedPlan& judged) {
        return judged.plan.article->craft == craft;
    });
    return one ? std::optional(craft) : std::nullopt;
}

std::string foot(const Ranked& ranked, const Question& q, std::size_t most) {
    std::string out = "\n";
    if (const auto mind = cautions_at_work(q.yarn, q.units); !mind.empty())
        out += labelled("Mind:", joined(mind, "; "), 0) + "\n";
    out += care_line(cautions_on(q, shown(ranked, most)));
    out += stands_on(q.yarn);
    out += labelled("Assumed:", joined(assumptions(q.yarn, q.units), "; "), 0) + "\n";
    if (const auto sharper = hints(q.yarn, craft_of(ranked.best)); !sharper.empty())
        out += labelled("Sharper:", sharper.front(), 0) + "\n";
    if (q.measured.owned.heddles.empty())
        out += wrapped(fmt::format(
                           "Heddles not said: any of those usually sold {} is taken; say yours, "
                           "such as --heddles {}.",
                           q.units.imperial() ? "by the inch" : "in metric sizes",
                           q.units.imperial() ? "8epi,10epi" : "30/10cm,40/10cm"),
                       0) +
               "\n";
    return out;
}

std::string in_full(const Ranked& ranked, const Question& q, std::size_t most) {
    return part("What it is for", ranked.best, most, q) +
           part("Also serves", ranked.also, most, q) +
           part("To learn from", ranked.samples, std::min<std::size_t>(most, 2), q);
}

std::vector<std::string> planned_next(const JudgedPlan& judged, const Arguments& arguments) {
    std::vector<std::string> words{"plan", judged.plan.article->name};
    if (arguments.has("for") && judged.plan.article->smallest == judged.plan.article->largest)
        words.insert(words.end(), {"--for", arguments.text("for")});
    return words;
}

// What to ask next of the first that it makes; of what it nearly makes, how much more to spin.
std::string next_step(const Ranked& ranked, const Arguments& arguments) {
    const auto batch = arguments.words.empty() ? "" : arguments.words[0];
    for (const auto* part : {&ranked.best, &ranked.also, &ranked.samples})
        if (!part->empty())
            return next_line(planned_next(part->front(), arguments), batch, arguments);
    if (ranked.short_of.empty()) return "";
    return next_line({"spin-more", ranked.short_of.front().plan.article->name}, batch, arguments);
}

std::string makes_text(const Ranked& ranked, const Question& q, const Arguments& arguments) {
    const bool whole = arguments.has("long");
    const auto most = arguments.has("all") ? all_of_them : usual_each;
    auto out =
        wrapped(batch_line(q), 0) + "\n" + wrapped(capital(class_line(q.yarn)) + ".", 0) + "\n\n";
    out += wrapped(fmt::format("What it can make, at the largest size with a {} chance that the "
                               "yarn does not run out. Suitability is out of 100.",
                               percent(q.request.certainty)),
                   0) +
           "\n";
    out += whole ? in_full(ranked, q, most) : ranked_lines(ranked, most, q);
    if (ranked.best.empty())
        out += "\nNothing in the catalogue suits this batch: what it lacks stands below.\n";
    return out + better_in_part(ranked, q, arguments.text("craft")) +
           set_text(best_set_of(ranked), q) +
           out_of_reach_lines(ranked.short_of, whole ? 2 * most : most, q) +
           (whole ? not_for_this_yarn(ranked.unfit, q, most)
                  : not_served_lines(ranked.unfit, most, q)) +
           foot(ranked, q, most) + next_step(ranked, arguments);
}

// Of unlike yarns each is asked what it makes: a mean of them makes nothing that they do.
std::string makes_of_each(const std::vector<Question>& yarns, const Question& q,
                          const Arguments& arguments) {
    const auto most = arguments.has("all") ? all_of_them : usual_each;
    const auto craft = arguments.text("craft");
    auto out = wrapped(batch_line(q), 0) + "\n";
    std::vector<YarnFoot> feet;
    for (const auto& one : yarns) {
        feet.push_back(foot_of(one));
        feet.back().sharper.resize(std::min<std::size_t>(1, feet.back().sharper.size()));
    }
    const auto in_common = taken_in_common(q, feet);
    std::vector<Ranked> all;  // whose articles are named
    for (const auto& one : yarns) all.push_back(rank(one, craft));
    std::vector<const Template*> named;
    for (std::size_t y = 0; y < yarns.size(); ++y) {
        const auto& ranked = all[y];
        const auto seen = shown(ranked, most);
        named.insert(named.end(), seen.begin(), seen.end());
        out += yarn_heading(q, y, 0) + ranked_lines(ranked, most, yarns[y]) +
               better_in_part(ranked, yarns[y], craft);
        if (const auto own = foot_text(feet[y], Of::one_of_several); !own.empty())
            out += "\n" + own;
    }
    out += "\n" + care_line(cautions_on(q, named)) + foot_text(in_common, Of::all_of_them);
    return out + "\n" +
           wrapped(
               "In one article they go as its parts, one of them planned beside another: "
               "gristwright plan woven-scarf --yarn 1 --as weft --with 'yarn 2'.",
               0) +
           "\n";
}

// The working of the plan that stands first; any other is shown by gristwright plan --working.
std::string first_working(const Ranked& ranked, const Question& q) {
    for (const auto* part : {&ranked.best, &ranked.also, &ranked.samples})
        if (!part->empty())
            return "\n" + heading("The first of them: " + part->front().plan.article->title) +
                   "\n" + plan_working(part->front(), q);
    return "";
}

Json makes_json(const Ranked& ranked, const Question& q) {
    Json out{{"batch", to_json(q)}, {"plans", Json::array()}};
    const std::pair<const char*, const std::vector<JudgedPlan>*> sections[] = {
        {"what it is for", &ranked.best},
        {"also serves", &ranked.also},
        {"to learn from", &ranked.samples},
        {"out of reach", &ranked.short_of},
        {"wasted or does not serve", &ranked.unfit}};
    int order = 0;
    for (const auto& [section, part] : sections)
        for (const auto& judged : *part) {
            auto one = to_json(judged, q.yarn);
            one["section"] = section;
            one["order"] = ++order;
            one["times_over"] = times_over(judged.plan);
            out["plans"].push_back(std::move(one));
        }
    out["best_set"] = to_json(best_set_of(ranked));
    out["cautions"] = texts(whole(cautions_on(q, shown(ranked, all_of_them))));
    return out;
}

std::string each_json(const std::vector<Question>& yarns, const Question& q,
                      std::string_view craft) {
    auto out = json_answer("makes");
    out["batch"] = whole_to_json(q);
    for (const auto& one : yarns) out["yarns"].push_back(makes_json(rank(one, craft), one));
    return dumped(out);
}

Answer run_makes(const Arguments& arguments) {
    auto q =
        ask(arguments, arguments.words.empty() ? "" : arguments.words[0], Skeins::each_if_asked);
    const auto whose = articles_for(arguments, q);
    const auto said = whose.empty() ? "" : wrapped(whose, 0) + "\n";
    const auto craft = arguments.text("craft");
    const auto notes = joined(q.measured.notes, "\n");
    if (const auto yarns = of_each_yarn(q); !yarns.empty())
        return {q.json ? each_json(yarns, q, craft) : said + makes_of_each(yarns, q, arguments),
                notes};
    const auto ranked = rank(q, craft);
    if (!q.json)
        return {
            said + makes_text(ranked, q, arguments) + (q.working ? first_working(ranked, q) : ""),
            notes};
    auto out = json_answer("makes");
    out.update(makes_json(ranked, q));
    return {dumped(out), notes};
}

}  // namespace

Command makes_command() {
    return {
        "makes",
        "What a batch can make, knitted and woven, ranked, each at the largest size that its "
        "metres cover.",
        "[BATCH.toml | SKEINS.csv]",
        0,
        1,
        together({{{"craft", "woven", "only knitted or only woven things", false, "knitted|woven"},
                   for_option,
                   {"long", "", "each article with its gauge or sett and reasons"},
                   {"all", "", "list everything, not the first six of each part"}},
                  plan_options(),
                  batch_options(),
                  answer_options()}),
        run_makes,
        "heron.toml --craft woven"};
}

}  // namespace gristwright::cli
