#include "cli/commands/split.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/exit_codes.hpp"
#include "cli/other_cuts.hpp"
#include "cli/out_file.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/next.hpp"
#include "cli/output/split_picture.hpp"
#include "cli/output/split_words.hpp"
#include "cli/output/working.hpp"
#include "cli/roles.hpp"
#include "cli/split_asked.hpp"
#include "cli/yarns.hpp"
#include "engine/allocation/constants.hpp"
#include "engine/evidence/constants.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;

std::string bars(const Split& s, const Question& q) {
    constexpr std::size_t usual_bar = 56;
    Length longest;
    std::size_t name_width = 5;
    for (const auto& skein : q.yarn.skeins) {
        longest = std::max(longest, skein.length);
        name_width = std::max(name_width, std::min<std::size_t>(14, characters(skein.name)));
    }
    const double widest = static_cast<double>(std::min(usual_bar, text_width() - name_width - 3));
    std::string out;
    for (std::size_t i = 0; i < q.yarn.skeins.size(); ++i) {
        std::string bar;
        double drawn = 0;
        const auto draw = [&](Length length, char with) {
            drawn += length / longest * widest;
            while (static_cast<double>(bar.size()) + 0.5 < drawn) bar += with;
        };
        for (const auto& cut : s.cuts)
            if (cut.skein == i) draw(cut.length, letter_of(s, cut.wish));
        if (s.placed.list.reserve == i)
            draw(centimetres(static_cast<double>(s.problem.reserve)), '~');
        draw(left_in(i, s, q), '.');
        out += fmt::format("  {} {}\n", padded(inert(q.yarn.skeins[i].name), name_width), bar);
    }
    return out;
}

std::string key(const Split& s, const SplitAsked& asked) {
    std::vector<std::string> said;
    for (std::size_t w = 0; w < s.parts.size(); ++w)
        if (s.parts[w].made)
            said.push_back(fmt::format("{} {}", letter_of(s, w), asked.request.wishes[w].name));
    if (s.placed.list.reserve) said.emplace_back("~ reserve for mending");
    said.emplace_back(". left over");
    return wrapped(joined(said), 2) + "\n";
}

std::string parts(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        if (!s.parts[w].made) continue;
        out += labelled(fmt::format("{}", letter_of(s, w)), part_words(s, asked, w, q), 2) + "\n";
    }
    return out;
}

std::string cut_list(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    int number = 0;
    for (const auto& cut : s.cuts) {
        out += labelled(fmt::format("{:>2}.", ++number), cut_words(cut, asked, q), 2) + "\n";
    }
    return out +
           wrapped(fmt::format("Every length includes a tail of {}.",
                               q.units.size(centimetres(double(s.problem.tail)))),
                   2) +
           "\n";
}

std::string more_words(const allocation::More& more, const Question& q) {
    return fmt::format("{} more in {}", q.units.yarn(centimetres(double(more.length))),
                       inert(q.yarn.skeins[more.skein].name));
}

std::string why_not(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (const auto& one : s.unmet) {
        std::vector<std::string> said{std::string(words(one.limit))};
        if (one.beside) said.push_back(more_words(*one.beside, q) + " would allow it too");
        if (one.instead && !one.loses.empty()) {
            std::vector<std::string> lost;
            for (const auto piece : one.loses) lost.push_back(asked.request.wishes[piece].name);
            said.push_back("it could be made instead of the " + joined(lost, " and the "));
        } else if (one.instead) {
            said.emplace_back("it could be made now, at the cost of size, joins or whole skeins");
        }
        if (!one.beside && !one.instead)
            said.emplace_back(one.settled
                                  ? "no length more in one skein would allow it"
                                  : "more was not settled; a larger --effort may settle it");
        out += labelled(
                   "-",
                   fmt::format("{}: {}.", asked.request.wishes[one.piece].name, joined(said, "; ")),
                   2) +
               "\n";
    }
    return out;
}

std::string impossible(const Split& s, const SplitAsked& asked, const Question& q) {
    std::vector<std::string> required;
    for (const auto& wish : asked.request.wishes)
        if (wish.sample || wish.main) required.push_back("the " + wish.name);
    auto out = wrapped(fmt::format("Impossible: the skeins do not hold {} together.",
                                   joined(required, " and ")),
                       0) +
               "\n";
    if (s.lacking)
        out += wrapped(fmt::format("{} would make it possible; so would a smaller sample, a lower "
                                   "certainty, or a smaller main project.",
                                   capital(more_words(*s.lacking, q))),
                       0) +
               "\n";
    return out;
}

std::string wasteful(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        const auto& sample = asked.request.wishes[w].sample;
        if (!sample || !s.parts[w].made || sample->linear == 0) continue;
        const auto waste = metres(sample->linear * s.parts[w].size.si());
        if (waste > s.parts[w].metres * constants::much_waste)
            out += wrapped(fmt::format("Of the woven sample's yarn {} are loom waste: another "
                                       "yarn as warp, or a pin frame, would teach as much.",
                                       q.units.yarn(waste)),
                           2) +
                   "\n";
    }
    return out;
}

// Skeins that differ show where they meet, unless they are worked by turns.
std::string by_turns(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    if (!s.by_piece)
        out += wrapped(
                   "The parts of the articles could not be cut one by one: the list goes by "
                   "article, and a join may fall inside a part.",
                   2) +
               "\n";
    if (q.yarn.agreement.answer == SameYarn::same || q.yarn.agreement.answer == SameYarn::differ)
        return out;  // several yarns are not worked by turns
    const auto sure = q.yarn.agreement.answer == SameYarn::alternate
                          ? "its skeins are hardly"
                          : "we cannot be sure that its skeins are";
    for (std::size_t j = 0; j < s.pieces.size(); ++j) {
        std::vector<std::string> skeins;
        const auto& wish = asked.request.wishes[s.pieces[j].wish];
        if (!wish.plan || wish.plan->article->craft != Craft::knitted) continue;
        for (const auto& cut : s.placed.list.cuts)
            if (cut.piece == j) skeins.push_back(inert(q.yarn.skeins[cut.skein].name));
        if (skeins.size() < 2) continue;
        const auto& piece = s.pieces[j].name;
        out += wrapped(fmt::format("{}{}: {} one yarn. Alternate {} every two rows while "
                                   "both last: that hides the change better than a join.",
                                   wish.name, piece.empty() ? "" : " (" + piece + ")", sure,
                                   joined(skeins, " and ")),
                       2) +
               "\n";
    }
    return out;
}

// Points for the skeins that the parts leave whole.
double kept_whole(const Split& s) {
    double out = 0;
    for (std::size_t i = 0; i < s.placing.skeins.size(); ++i)
        if (s.placed.list.taken_from(i) == 0) out += double(s.placing.skeins[i].bonus) / 1e6;
    return out;
}

std::string split_working(const Split& s, const SplitAsked& asked) {
    auto out = "\n" + heading("Working") + "\n";
    out += wrapped(fmt::format("branch and bound over whole centimetres, {} nodes; worth {:.2f} "
                               "points, no split is worth more than {:.2f}",
                               s.allocation.nodes, double(s.allocation.list.worth) / 1e6,
                               double(s.allocation.bound) / 1e6),
                   2) +
           "\n";
    for (std::size_t j = 0; j < s.problem.pieces.size(); ++j) {
        const auto& p = s.problem.pieces[j];
        out += wrapped(
                   fmt::format("{}: at least {:.2f} m, at most {:.2f} m, at most {} joins{}",
                               asked.request.wishes[j].name, double(p.least) / 100,
                               double(p.most()) / 100, p.max_joins, p.required ? ", required" : ""),
                   2) +
               "\n";
    }
    std::vector<std::string> metre;
    const auto worths = allocation::worth_of_a_metre(s.problem, s.allocation);
    for (std::size_t i = 0; i < worths.size(); ++i)
        metre.push_back(
            fmt::format("{:.2f} in {}", double(worths[i]) / 1e6, s.problem.skeins[i].name));
    out += wrapped("a metre more would be worth, in points: " + inert(joined(metre)), 2) + "\n";
    out += wrapped(fmt::format("then each part at its length: joins and coarser weft cost {:.2f} "
                               "points, no way of cutting them costs less than {:.2f}",
                               kept_whole(s) - double(s.placed.list.worth) / 1e6,
                               kept_whole(s) - double(s.placed.bound) / 1e6),
                   2) +
           "\n";
    for (const auto& p : s.placing.pieces)
        out += wrapped(fmt::format("{}: {:.2f} m, at most {} joins at {:g} points", p.name,
                                   double(p.least) / 100, p.max_joins, double(p.join_cost) / 1e6),
                       2) +
               "\n";
    for (const auto& c : {constants::worth_of_main, constants::worth_of_growth,
                          constants::worth_of_knowing, constants::worth_of_whole,
                          constants::unevenness, constants::read_error, constants::swatch_metres})
        out +=
            wrapped(fmt::format("{} = {:g} {} [{}]", c.name, c.value, c.unit, words(c.mark)), 6) +
            "\n";
    return out + not_shown();
}

std::vector<const Template*> articles_of(const SplitAsked& asked) {
    std::vector<const Template*> out;
    for (const auto& judged : asked.plans) out.push_back(judged.plan.article.get());
    return out;
}

// Of the other yarn: how much to have, and how to cut it where it is one of this batch.
std::string other_yarn_cuts(const Arguments& arguments, const Split& s, const SplitAsked& asked,
                            const Question& q) {
    const auto shared = shared_plan(s, asked);
    if (!shared) return "";
    auto out = "\n" + heading("The other yarn") + "\n" + other_yarn_text(*shared, q);
    const auto other = other_cuts(arguments, *shared, asked, q);
    if (!other) return out;
    if (!other->split.found())
        return out +
               wrapped(
                   "Its skeins do not hold it at that size: a smaller --keep, or a lower "
                   "certainty.",
                   2) +
               "\n";
    return out + cut_list(other->split, other->asked, other->question);
}

std::string split_text(const Split& s, const SplitAsked& asked, const Question& q,
                       const Arguments& arguments) {
    auto out = wrapped(batch_line(q), 0) + "\n\n";
    if (!s.found()) return out + impossible(s, asked, q);
    out += parts(s, asked, q) + "\n" + heading("Skeins") + "\n" + bars(s, q) + key(s, asked);
    out += "\n" + heading("Cut list, in the order to wind off") + "\n" + cut_list(s, asked, q);
    out += other_yarn_cuts(arguments, s, asked, q);
    if (!s.unmet.empty()) out += "\n" + heading("Not made, and why") + "\n" + why_not(s, asked, q);
    const auto mind = wasteful(s, asked, q) + by_turns(s, asked, q);
    if (!mind.empty()) out += "\n" + heading("Mind") + "\n" + mind;
    return out + "\n" + care_line(cautions_on(q, articles_of(asked))) + stands_on(q.yarn) +
           proof(s.allocation) + "\n";
}

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

Answer run(const Arguments& arguments) {
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
            run,
            "heron.toml --sample knitted --main triangle-shawl"};
}

}  // namespace gristwright::cli
