#include "cli/commands/compare.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "catalog/text/nearest.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/next.hpp"
#include "cli/output/reason_words.hpp"
#include "cli/output/two_yarns.hpp"
#include "cli/output/working.hpp"
#include "cli/ranking.hpp"
#include "cli/would_be.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t label_width = 13, gap = 2;

// Two of them and the label side by side.
std::size_t column_width() { return (text_width() - label_width - gap) / 2; }

std::string row(const std::string& label, const std::string& left, const std::string& right) {
    const auto wide = column_width();
    const auto a = apart(wrapped(left, 0, wide), '\n'), b = apart(wrapped(right, 0, wide), '\n');
    std::string out;
    for (std::size_t i = 0; i < std::max(a.size(), b.size()); ++i) {
        auto line = padded(i == 0 ? label : "", label_width) +
                    padded(i < a.size() ? a[i] : "", wide + gap) + (i < b.size() ? b[i] : "");
        while (!line.empty() && line.back() == ' ') line.pop_back();
        out += line + "\n";
    }
    return out;
}

std::string side_by_side(const JudgedPlan& a, const JudgedPlan& b, const Question& q) {
    const auto two = [&](const std::string& label, auto say) { return row(label, say(a), say(b)); };
    auto out = two("", [](const JudgedPlan& j) {
        return fmt::format("{} ({})", j.plan.article->title, words(j.plan.article->craft));
    });
    out += two("suitability", [](const JudgedPlan& j) {
        return fmt::format("{:.0f}, {}", j.judgement.score, words(serves(j.judgement.score)));
    });
    out += two("size", [&](const JudgedPlan& j) { return reach_line(j.plan, q.units); });
    out += two("made with",
               [&](const JudgedPlan& j) { return making_line(j.plan.pieces.front(), q.units); });
    out += two("uses", [&](const JudgedPlan& j) { return q.units.yarn_range(j.plan.need); });
    out += two("left", [&](const JudgedPlan& j) { return q.units.yarn(j.plan.left()); });
    out += two("certainty", [](const JudgedPlan& j) { return percent(j.plan.certainty); });
    out += two("for",
               [&](const JudgedPlan& j) { return joined(said_in_favour(j.judgement, q.yarn)); });
    out += two("against", [&](const JudgedPlan& j) {
        const auto said = joined(said_against(j.judgement, j.plan, q.yarn));
        return said.empty() ? "nothing much" : said;
    });
    return out;
}

std::vector<std::string> kinds(const catalog::Catalogue& catalogue) {
    std::vector<std::string> out;
    for (const auto& t : catalogue.templates)
        if (std::find(out.begin(), out.end(), t.article) == out.end()) out.push_back(t.article);
    std::sort(out.begin(), out.end());
    return out;
}

bool is_kind(const catalog::Catalogue& catalogue, const std::string& word) {
    const auto all = kinds(catalogue);
    return std::find(all.begin(), all.end(), word) != all.end();
}

// A file, or a batch of the notebook.
bool is_batch(const Arguments& arguments, const std::string& word) {
    if (!is_remembered(word)) return true;
    const auto place = notebook_place(arguments);
    std::error_code none;
    if (place.empty() || !std::filesystem::exists(place, none)) return false;
    return notebook(arguments, catalog::Notebook::Mode::read_only).has_batch(word);
}

// The one that is made better, or at all.
std::string better_next(const JudgedPlan& knitted, const JudgedPlan& woven,
                        const Arguments& arguments) {
    const bool by_hand = InBoth{knitted, woven}.ahead() >= 0;
    return next_line({"plan", (by_hand ? knitted : woven).plan.article->name},
                     arguments.words.size() > 1 ? arguments.words[1] : "", arguments);
}

// What is clearest, in full in the yarn that it is clearest for; of a yarn that is not spun yet,
// how to spin for it.
std::string then_next(const std::vector<InBoth>& all, const std::vector<std::string>& batches,
                      const Arguments& arguments) {
    if (all.empty()) return "";
    const auto& name = all.front().a.plan.article->name;
    const bool first = all.front().ahead() >= 0;
    if (!first && batches.size() < 2) return fmt::format("Next: gristwright spin-for {}\n", name);
    return next_line({"plan", name}, batches.empty() ? "" : batches[first ? 0 : 1], arguments);
}

// Two batches, or one and what it would be; before them the kind of article, if one is named.
std::optional<Answer> of_two_yarns(const Arguments& arguments) {
    auto words = arguments.words;
    const auto how = arguments.text("would-be");
    std::string article;
    if (!words.empty() && is_kind(catalog::built_in(), words[0])) {
        article = words[0];
        words.erase(words.begin());
    } else if (!words.empty() && !is_batch(arguments, words[0])) {
        return std::nullopt;  // an article that is none
    }
    if (how.empty() && words.size() == 1 && article.empty())
        throw Misused("compare needs an ARTICLE before the batch, a second batch, or --would-be");
    if (how.empty() && words.size() < 2) return std::nullopt;
    if (!how.empty() && words.size() > 1)
        throw Misused("compare takes two batches, or one and --would-be");
    if (words.size() > 2) throw Misused("compare takes two batches, not three");
    const auto a = ask(arguments, words.empty() ? "" : words[0]);
    auto b = how.empty() ? ask(arguments, words[1]) : as_would_be(how, a);
    b.units = a.units;
    const auto all = in_both(a, b, article);
    const std::size_t most = arguments.has("all") ? all.size() : 8;
    return Answer{a.json ? two_yarns_json(a, b, all)
                         : two_yarns_text(a, b, all, most) + then_next(all, words, arguments),
                  joined(a.measured.notes, "\n")};
}

Answer run_compare(const Arguments& arguments) {
    if (auto said = of_two_yarns(arguments)) return *said;
    if (arguments.words.empty()) throw Misused("compare needs an ARTICLE, or two batches");
    const auto q = ask(arguments, arguments.words.size() > 1 ? arguments.words[1] : "");
    const auto& article = arguments.words[0];
    std::vector<JudgedPlan> plans;
    for (const auto& t : q.catalogue->templates)
        if (t.article == article) plans.push_back(judged_plan(t, q));
    if (plans.empty())
        throw Refused(fmt::format("there is no article '{}'{}; known: {}", article,
                                  catalog::did_you_mean(article, kinds(*q.catalogue)),
                                  joined(kinds(*q.catalogue))));
    const auto [knitted, woven] = best_pair(plans);
    if (!knitted || !woven)
        throw Refused(
            fmt::format("the catalogue has a {} only {}", article, knitted ? "knitted" : "woven"));
    const auto notes = joined(q.measured.notes, "\n");
    if (q.json) {
        auto out = json_answer("compare");
        out["batch"] = to_json(q);
        out["knitted"] = to_json(*knitted, q.yarn);
        out["woven"] = to_json(*woven, q.yarn);
        out["knitted"]["cautions"] = texts(cautions(knitted->plan, q));
        out["woven"]["cautions"] = texts(cautions(woven->plan, q));
        return {dumped(out), notes};
    }
    return {
        wrapped(batch_line(q), 0) + "\n\n" + side_by_side(*knitted, *woven, q) + "\n" +
            pair_verdict(*knitted, *woven) + "\n" +
            care_line(cautions_on(q, {knitted->plan.article.get(), woven->plan.article.get()})) +
            (q.working ? plan_working(*knitted, q) + plan_working(*woven, q) : "") +
            better_next(*knitted, *woven, arguments),
        notes};
}

}  // namespace

Command compare_command() {
    return {
        "compare",
        "The same article knitted and woven, side by side, each in the template that this "
        "yarn serves best; or two yarns, or one as it is and as it would be, article by "
        "article, with what decides.",
        "[ARTICLE] [BATCH] [BATCH]",
        0,
        3,
        together({{would_be_option, {"all", "", "of two yarns every article, not the first eight"}},
                  plan_options(),
                  batch_options(),
                  answer_options()}),
        run_compare,
        "scarf heron.toml"};
}

}  // namespace gristwright::cli
