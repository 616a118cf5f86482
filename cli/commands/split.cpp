#include "cli/commands/split.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "cli/exit_codes.hpp"
#include "cli/out_file.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/next.hpp"
#include "cli/output/split_picture.hpp"
#include "cli/output/split_text.hpp"
#include "cli/output/split_working.hpp"
#include "cli/roles.hpp"
#include "cli/yarns.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;

// The first of the articles in full, at the size that it gets.
std::string plan_next(const Split& s, const SplitAsked& asked, const Question& q,
                      const Arguments& arguments) {
    const auto batch = arguments.words.empty() ? "" : arguments.words[0];
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        const auto& wish = asked.request.wishes[w];
        if (!s.parts[w].made || !wish.plan) continue;
        std::vector<std::string> words{"plan", wish.plan->article->name, "--size",
                                       q.units.typed_size(s.parts[w].size)};
        for (const auto* option : {"as", "with"})
            if (wish.main && arguments.has(option))
                words.insert(words.end(), {fmt::format("--{}", option), arguments.text(option)});
        return next_line(words, batch, arguments);
    }
    return "";
}

std::string split_json(const Split& s, const SplitAsked& asked, const Question& q) {
    using Outcome = allocation::Allocation::Outcome;
    auto out = json_answer("split");
    const auto outcome = s.allocation.outcome;
    out["outcome"] = outcome == Outcome::proven_best  ? "proven best"
                     : outcome == Outcome::best_found ? "best found"
                     : outcome == Outcome::impossible ? "impossible"
                                                      : "nothing found";
    out["gap"] = number(s.allocation.gap());
    out["parts"] = Json::array();
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        const auto& part = s.parts[w];
        const auto& wish = asked.request.wishes[w];
        out["parts"].push_back({{"name", inert(wish.name)},
                                {"sample", wish.sample.has_value()},
                                {"made", part.made},
                                {"metres", number(in_metres(part.metres))},
                                {"size_cm", number(in_centimetres(part.size))},
                                {"error", number(part.error)},
                                {"second_error", number(part.second_error)}});
    }
    out["cuts"] = Json::array();
    for (const auto& cut : s.cuts)
        out["cuts"].push_back({{"skein", inert(q.yarn.skeins[cut.skein].name)},
                               {"for", inert(asked.request.wishes[cut.wish].name)},
                               {"piece", inert(cut.piece)},
                               {"metres", number(in_metres(cut.length))},
                               {"grams", number(in_grams(cut.mass))},
                               {"ball_metres", number(in_metres(cut.ball_length))},
                               {"ball_grams", number(in_grams(cut.ball_mass))}});
    out["cautions"] = texts(whole(cautions_on(q, articles_of(asked))));
    out["lacking"] = Json(nullptr);
    if (s.lacking)
        out["lacking"] = {{"skein", inert(q.yarn.skeins[s.lacking->skein].name)},
                          {"metres", number(double(s.lacking->length) / 100)}};
    return dumped(out);
}

Answer run_split(const Arguments& arguments) {
    if (arguments.has("out")) out_file(arguments);  // refused before the work
    auto q = ask(arguments, arguments.words.empty() ? "" : arguments.words[0]);
    const auto asked = asked_of(arguments, q);
    const auto s = split_for(asked, q);
    auto notes = joined(q.measured.notes, "\n");
    if (s.stopped)
        notes += std::string(notes.empty() ? "" : "\n") + "stopped: this is the best so far";
    if (arguments.has("out") && s.found())
        write_file(out_file(arguments), split_picture(s, asked, q).file());
    const int code = s.stopped ? interrupted : answered;
    if (q.json) return {split_json(s, asked, q), notes, code};
    return {split_text(s, asked, q, arguments) +
                (q.working && s.found() ? split_working(s, asked) : "") +
                plan_next(s, asked, q, arguments),
            notes, code};
}

}  // namespace

Command split_command() {
    return {"split",
            "Samples and projects out of the same skeins: what each gets, what to wind off which "
            "skein, "
            "and why a wish was not met.",
            "[BATCH.toml | SKEINS.csv]",
            0,
            1,
            together(
                {split_options(),
                 role_options(),
                 {{"certainty", "90",
                   "wished chance that an article's metres suffice, 50 to 99.9 %", false, "", "90"},
                  yarn_option},
                 out_options("cuts.svg", "draw the skeins and cuts to this file as well"),
                 batch_options(),
                 answer_options()}),
            run_split,
            "heron.toml --sample knitted --main triangle-shawl"};
}

}  // namespace gristwright::cli
