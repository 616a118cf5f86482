#include "cli/output/two_yarns.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/size_words.hpp"
#include "cli/output/table.hpp"

namespace gristwright::cli {
namespace {

constexpr double alike_within = 5;  // points: less than a person would choose a yarn by

bool serves_and_reaches(const JudgedPlan& judged) {
    return judged.plan.reach != Reach::short_of && serves(judged.judgement.score) <= Serves::fairly;
}

bool reaches(const JudgedPlan& judged) { return judged.plan.reach != Reach::short_of; }

// The first of these that is not among those.
std::string first_besides(const std::vector<std::string>& these,
                          const std::vector<std::string>& those) {
    for (const auto& one : these)
        if (std::find(those.begin(), those.end(), one) == those.end()) return one;
    return "";
}

std::string reason(const JudgedPlan& better, const Question& of_better, const char* better_name,
                   const JudgedPlan& worse, const Question& of_worse, const char* worse_name) {
    const auto all = said_against(worse.judgement, worse.plan, of_worse.yarn);
    const auto con =
        first_besides(all, said_against(better.judgement, better.plan, of_better.yarn));
    if (!con.empty()) return fmt::format("{}: {}", worse_name, con);
    const auto pro = first_besides(said_in_favour(better.judgement, of_better.yarn),
                                   said_in_favour(worse.judgement, of_worse.yarn));
    if (!pro.empty()) return fmt::format("{}: {}", better_name, pro);
    if (!all.empty()) return fmt::format("{}: {}, more so", worse_name, all.front());
    return fmt::format("{} has more of what it asks", better_name);
}

std::vector<Cell> row_of(const InBoth& both, const Question& a, const Question& b) {
    const auto& t = *both.a.plan.article;
    return {{score_words(both.a)},
            {score_words(both.b)},
            {t.name},
            {std::string(words(t.craft)), t.craft == Craft::knitted ? Dye::knitted : Dye::woven},
            {reached_size(both.a, a.units)},
            {reached_size(both.b, a.units)},
            {deciding(both, a, b)}};
}

}  // namespace

std::string score_words(const JudgedPlan& judged) {
    return reaches(judged) ? fmt::format("{:.0f}", judged.judgement.score) : "-";
}

std::string reached_size(const JudgedPlan& judged, const Units& units) {
    if (!reaches(judged)) return "";
    return short_size(judged.plan, units) + (smaller_than_ideal(judged.plan) ? " *" : "");
}

std::vector<PartOfBoth> parts_of(const std::vector<InBoth>& all) {
    std::vector<PartOfBoth> out{{"Better in A", {}}, {"Better in B", {}}, {"About alike", {}}};
    for (const auto& one : all)
        out[one.ahead() > alike_within    ? 0
            : one.ahead() < -alike_within ? 1
                                          : 2]
            .articles.push_back(&one);
    return out;
}

double InBoth::ahead() const {
    if (reaches(a) != reaches(b)) return reaches(a) ? a.judgement.score : -b.judgement.score;
    return a.judgement.score - b.judgement.score;
}

std::vector<InBoth> in_both(const Question& a, const Question& b, const std::string& article) {
    std::vector<InBoth> out;
    for (const auto& t : a.catalogue->templates) {
        if (t.sample || (!article.empty() && t.article != article)) continue;
        InBoth both{judged_plan(t, a), judged_plan(t, b)};
        if (serves_and_reaches(both.a) || serves_and_reaches(both.b))
            out.push_back(std::move(both));
    }
    std::stable_sort(out.begin(), out.end(), [](const InBoth& x, const InBoth& y) {
        return std::abs(x.ahead()) > std::abs(y.ahead());
    });
    return out;
}

std::string deciding(const InBoth& both, const Question& a, const Question& b) {
    if (!reaches(both.a)) return "A is short by " + a.units.yarn(both.a.plan.short_by);
    if (!reaches(both.b)) return "B is short by " + a.units.yarn(both.b.plan.short_by);
    if (std::abs(both.ahead()) <= alike_within) return "alike";
    return both.ahead() > 0 ? reason(both.a, a, "A", both.b, b, "B")
                            : reason(both.b, b, "B", both.a, a, "A");
}

std::string two_yarns_text(const Question& a, const Question& b, const std::vector<InBoth>& all,
                           std::size_t most) {
    auto out = labelled("A", batch_line(a), 0) + "\n" + labelled("B", batch_line(b), 0) + "\n";
    if (all.empty()) return out + "\nNeither serves and reaches for any article of that kind.\n";
    Table table({{"  A", true},
                 {"  B", true},
                 {"name, for plan"},
                 {"craft", false, 2},
                 {"size in A", false, 3},
                 {"size in B", false, 4},
                 {"what decides"}});
    const auto parts = parts_of(all);
    std::vector<const Template*> named;
    for (const auto& part : parts)
        for (std::size_t i = 0; i < std::min(most, part.articles.size()); ++i) {
            table.add(row_of(*part.articles[i], a, b));
            named.push_back(part.articles[i]->a.plan.article.get());
        }
    const auto lines = table.lines(table_width());
    out += "\n" + lines.head;
    auto line = lines.rows.begin();
    for (const auto& part : parts) {
        if (part.articles.empty()) continue;
        const auto shown = std::min(most, part.articles.size());
        out += heading(fmt::format("{} ({})", part.title, part.articles.size())) + "\n";
        for (std::size_t i = 0; i < shown; ++i) out += *line++;
        if (shown < part.articles.size())
            out +=
                fmt::format("     and {} more: --all lists them\n", part.articles.size() - shown);
    }
    if (out.find(" *") != std::string::npos)
        out += "     * smaller than it ought to be: the yarn goes no further\n";
    return out + "\n" + care_line(cautions_on(a, named));
}

std::string two_yarns_json(const Question& a, const Question& b, const std::vector<InBoth>& all) {
    auto out = json_answer("compare");
    out["batches"] = Json::array({to_json(a), to_json(b)});
    out["articles"] = Json::array();
    std::vector<const Template*> named;
    for (const auto& both : all) {
        const auto one = [](const JudgedPlan& judged) {
            return Json{{"suitability", number(judged.judgement.score)},
                        {"reach", words(judged.plan.reach)},
                        {"size_cm", number(in_centimetres(judged.plan.size))},
                        {"metres", number(in_metres(judged.plan.need.mid))}};
        };
        out["articles"].push_back({{"template", both.a.plan.article->name},
                                   {"craft", words(both.a.plan.article->craft)},
                                   {"a", one(both.a)},
                                   {"b", one(both.b)},
                                   {"decides", deciding(both, a, b)}});
        named.push_back(both.a.plan.article.get());
    }
    out["cautions"] = texts(whole(cautions_on(a, named)));
    return dumped(out);
}

}  // namespace gristwright::cli
