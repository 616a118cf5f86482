#include "cli/commands/split.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <deque>
#include <nlohmann/json.hpp>

#include "catalog/nearest.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "engine/allocation/constants.hpp"
#include "engine/allocation/split.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;
using allocation::Wish;

// What is made out of the skeins, with the cloth that a sample is made in.
struct Asked {
    allocation::SplitRequest request;
    std::deque<JudgedPlan> plans;
    struct Fabric {
        std::string name;           // empty for an article
        int across = 1, along = 1;  // repeats
    };
    std::vector<Fabric> fabrics;  // by wish
};

Wish article_wish(Asked& asked, Question& q, const std::string& name, bool main) {
    const auto& article = find_template(q.catalogue, name);
    auto& judged = asked.plans.emplace_back(judged_plan(article, q));
    for (const auto obstacle : judged.plan.obstacles)
        if (stops(obstacle))
            throw std::invalid_argument(fmt::format("{}: {}", name, words(obstacle)));
    Wish wish;
    wish.name = article.title;
    wish.plan = &judged.plan;
    wish.main = main;
    wish.suitability = judged.judgement.score / 100;
    wish.at_size = [&article, &q](Length size) {
        auto request = q.request;
        request.size = size;
        return plan(article, q.yarn, q.catalogue.fabrics, q.measured.owned, request);
    };
    return wish;
}

const PlanPiece* first_piece(const Asked& asked, bool knitted) {
    for (const auto& judged : asked.plans)
        for (const auto& piece : judged.plan.pieces)
            if (piece.knit.has_value() == knitted) return &piece;
    return nullptr;
}

// "knitted", "woven:plain": in the fabric named, else in the one the project needs.
Wish sample_wish(Asked& asked, const Question& q, const std::string& text, Length loom_waste) {
    const auto colon = text.find(':');
    const auto craft = text.substr(0, colon);
    const auto fabric = colon == std::string::npos ? "" : text.substr(colon + 1);
    if (craft != "knitted" && craft != "woven")
        throw std::invalid_argument(fmt::format(
            "--sample is knitted or woven, with a fabric if you like (knitted:cables), not '{}'",
            text));
    const bool knitted = craft == "knitted";
    const auto* piece = first_piece(asked, knitted);
    const auto name = !fabric.empty() ? fabric
                      : piece         ? piece->piece->fabric
                      : knitted       ? std::string("stocking stitch")
                                      : std::string("plain");
    Wish wish;
    wish.name = fmt::format("{} sample", craft);
    if (knitted) {
        const auto* row = q.catalogue.fabrics.knitted_named(name);
        if (!row)
            throw std::invalid_argument(fmt::format("--sample: there is no stitch '{}'", name));
        asked.fabrics.push_back({name, row->stitch_repeat, row->row_repeat});
        const auto firmness = piece ? piece->knit->purpose : Firmness::ordinary;
        wish.sample = allocation::knitted_sample(
            knit_cloth(q.yarn, *row, firmness, q.measured.owned.needles));
    } else {
        const auto* row = q.catalogue.fabrics.weave_named(name);
        if (!row)
            throw std::invalid_argument(fmt::format("--sample: there is no weave '{}'", name));
        asked.fabrics.push_back({name, row->end_repeat, row->pick_repeat});
        wish.sample = allocation::woven_sample(
            weave_cloth(q.yarn, *row, Spacing::scarf, Finish::light, q.measured.owned), loom_waste);
    }
    return wish;
}

std::size_t skein_named(const Question& q, const std::string& name) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < q.yarn.skeins.size(); ++i) {
        if (q.yarn.skeins[i].name == name) return i;
        names.push_back(q.yarn.skeins[i].name);
    }
    throw std::invalid_argument(fmt::format("--from: there is no skein '{}'{}; there are: {}", name,
                                            catalog::did_you_mean(name, names), joined(names)));
}

allocation::JoinCost join_cost(const std::string& word) {
    if (word == "low") return allocation::JoinCost::low;
    if (word == "high") return allocation::JoinCost::high;
    if (word == "usual") return allocation::JoinCost::usual;
    throw std::invalid_argument(fmt::format("--join-cost is low, usual or high, not '{}'", word));
}

void ask_for(const Arguments& arguments, Question& q, Asked& asked) {
    auto& request = asked.request;
    request.certainty = q.request.certainty;
    request.join_cost = join_cost(arguments.text("join-cost", "usual"));
    request.whole_warp = arguments.has("whole-warp");
    if (arguments.has("reserve")) request.reserve = read_length_option(arguments, "reserve");
    std::vector<Wish> articles;
    for (const auto& name : arguments.all("keep"))
        articles.push_back(article_wish(asked, q, name, true));
    for (const auto& name : arguments.all("piece"))
        articles.push_back(article_wish(asked, q, name, false));
    const auto waste = arguments.has("loom-waste") ? read_length_option(arguments, "loom-waste")
                                                   : centimetres(constants::sample_loom_waste);
    for (const auto& text : arguments.all("sample")) {
        auto wish = sample_wish(asked, q, text, waste);
        if (arguments.has("from")) wish.only_from = skein_named(q, arguments.text("from"));
        request.wishes.push_back(std::move(wish));
    }
    for (auto& wish : articles) {
        request.wishes.push_back(std::move(wish));
        asked.fabrics.emplace_back();
    }
    if (request.wishes.empty())
        throw Misused(
            "split needs something to make: --sample knitted, --keep TEMPLATE, --piece TEMPLATE");
}

char letter(std::size_t wish) { return static_cast<char>('a' + wish % 26); }

std::string bars(const Split& s, const Question& q) {
    constexpr double widest = 56;
    Length longest;
    std::size_t name_width = 5;
    for (const auto& skein : q.yarn.skeins) {
        longest = std::max(longest, skein.length);
        name_width = std::max(name_width, std::min<std::size_t>(14, characters(skein.name)));
    }
    std::string out;
    for (std::size_t i = 0; i < q.yarn.skeins.size(); ++i) {
        std::string bar;
        double drawn = 0;
        const auto draw = [&](Length length, char with) {
            drawn += length / longest * widest;
            while (static_cast<double>(bar.size()) + 0.5 < drawn) bar += with;
        };
        for (const auto& cut : s.cuts)
            if (cut.skein == i) draw(cut.length, letter(cut.wish));
        auto left = q.yarn.skeins[i].length;
        for (const auto& cut : s.cuts)
            if (cut.skein == i) left -= cut.length;
        if (s.placed.list.reserve == i) {
            const auto kept = centimetres(static_cast<double>(s.problem.reserve));
            draw(kept, '~');
            left -= kept;
        }
        draw(left, '.');
        out += fmt::format("  {} {}\n", padded(inert(q.yarn.skeins[i].name), name_width), bar);
    }
    return out;
}

std::string key(const Split& s, const Asked& asked) {
    std::vector<std::string> said;
    for (std::size_t w = 0; w < s.parts.size(); ++w)
        if (s.parts[w].made)
            said.push_back(fmt::format("{} {}", letter(w), asked.request.wishes[w].name));
    if (s.allocation.list.reserve) said.emplace_back("~ reserve for mending");
    said.emplace_back(". left over");
    return wrapped(joined(said), 2) + "\n";
}

std::string sample_line(const Wish& wish, const allocation::SplitPart& part,
                        const Asked::Fabric& fabric, const Question& q) {
    const auto& s = *wish.sample;
    const bool knitted = s.linear == 0;
    const auto whole = [](double count, int repeat) {
        return repeat * std::max(1, static_cast<int>(std::lround(count / repeat)));
    };
    const double across = (knitted ? s.count : s.second_count) * part.size.si();
    const double along = (knitted ? s.second_count : s.count) * part.size.si();
    return fmt::format(
        "{} in {}: {} square finished, {} {} by {} {}; {}. It tells the {} to "
        "±{:.1f} % "
        "and the {} to ±{:.1f} %.",
        wish.name, fabric.name, q.units.size(part.size), whole(across, fabric.across),
        knitted ? "stitches" : "ends", whole(along, fabric.along), knitted ? "rows" : "picks",
        q.units.yarn(part.metres), knitted ? "stitch gauge" : "picks", 100 * 1.645 * part.error,
        knitted ? "row gauge" : "sett", 100 * 1.645 * part.second_error);
}

std::string article_line(const Wish& wish, const allocation::SplitPart& part, const Question& q,
                         double certainty) {
    const auto& t = *wish.plan->article;
    auto out =
        fmt::format("{}: {} {} from {}, with a {} chance that they suffice.", wish.name, t.measure,
                    q.units.size(part.size), q.units.yarn(part.metres), percent(certainty));
    if (part.size_when_known > part.size)
        out += fmt::format(
            " Once a sample is washed, weighed and measured, the same metres may go "
            "as far as {}.",
            q.units.size(part.size_when_known));
    return out;
}

std::string parts(const Split& s, const Asked& asked, const Question& q) {
    std::string out;
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        if (!s.parts[w].made) continue;
        const auto& wish = asked.request.wishes[w];
        out += labelled(fmt::format("{}", letter(w)),
                        capital(wish.sample
                                    ? sample_line(wish, s.parts[w], asked.fabrics[w], q)
                                    : article_line(wish, s.parts[w], q, asked.request.certainty)),
                        2) +
               "\n";
    }
    return out;
}

// What a length is for: "Woven scarf (panel, weft)".
std::string target(const allocation::WindOff& cut, const Asked& asked) {
    const auto& name = asked.request.wishes[cut.wish].name;
    return cut.piece.empty() ? name : fmt::format("{} ({})", name, cut.piece);
}

std::string cut_list(const Split& s, const Asked& asked, const Question& q) {
    std::string out;
    int number = 0;
    for (const auto& cut : s.cuts) {
        const bool all = cut.ball_length < centimetres(50);
        out += labelled(fmt::format("{:>2}.", ++number),
                        fmt::format("from {}: {}, {:.1f} g, for the {}; {}",
                                    inert(q.yarn.skeins[cut.skein].name), q.units.yarn(cut.length),
                                    in_grams(cut.mass), target(cut, asked),
                                    all ? std::string("that is all of it")
                                        : fmt::format("the ball then weighs {:.1f} g ({} left)",
                                                      in_grams(cut.ball_mass),
                                                      q.units.yarn(cut.ball_length))),
                        2) +
               "\n";
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

std::string why_not(const Split& s, const Asked& asked, const Question& q) {
    std::string out;
    for (const auto& one : s.unmet) {
        std::vector<std::string> said;
        if (one.beside) said.push_back(more_words(*one.beside, q) + " would allow it too");
        if (one.instead && !one.loses.empty()) {
            std::vector<std::string> lost;
            for (const auto piece : one.loses) lost.push_back(asked.request.wishes[piece].name);
            said.push_back("it could be made instead of the " + joined(lost, " and the "));
        } else if (one.instead) {
            said.emplace_back("it could be made now, at the cost of size, joins or whole skeins");
        }
        if (said.empty()) said.emplace_back("no length more in one skein would allow it");
        out += labelled(
                   "-",
                   fmt::format("{}: {}.", asked.request.wishes[one.piece].name, joined(said, "; ")),
                   2) +
               "\n";
    }
    return out;
}

std::string proof(const allocation::Allocation& a) {
    if (a.outcome == allocation::Allocation::Outcome::proven_best)
        return "No better split exists (proven).";
    return fmt::format("The best split found; no other can be more than {:.1f} % better.",
                       100 * a.gap());
}

std::string impossible(const Split& s, const Asked& asked, const Question& q) {
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

std::string wasteful(const Split& s, const Asked& asked, const Question& q) {
    std::string out;
    for (std::size_t w = 0; w < s.parts.size(); ++w) {
        const auto& sample = asked.request.wishes[w].sample;
        if (!sample || !s.parts[w].made || sample->linear == 0) continue;
        const auto waste = metres(sample->linear * s.parts[w].size.si());
        if (waste > s.parts[w].metres * 0.35)
            out += wrapped(fmt::format("Of the woven sample's metres {} are loom waste: another "
                                       "yarn as warp, or a pin frame, would teach as much.",
                                       q.units.yarn(waste)),
                           2) +
                   "\n";
    }
    return out;
}

// Skeins that differ show where they meet, unless they are worked by turns.
std::string by_turns(const Split& s, const Asked& asked, const Question& q) {
    std::string out;
    if (!s.by_piece)
        out += wrapped(
                   "The parts of the articles could not be cut one by one: the list goes by "
                   "article, and a join may fall inside a part.",
                   2) +
               "\n";
    if (q.yarn.agreement.answer == SameYarn::same) return out;
    for (std::size_t j = 0; j < s.pieces.size(); ++j) {
        std::vector<std::string> skeins;
        const auto& wish = asked.request.wishes[s.pieces[j].wish];
        if (!wish.plan || wish.plan->article->craft != Craft::knitted) continue;
        for (const auto& cut : s.placed.list.cuts)
            if (cut.piece == j) skeins.push_back(inert(q.yarn.skeins[cut.skein].name));
        if (skeins.size() < 2) continue;
        const auto& piece = s.pieces[j].name;
        out +=
            wrapped(fmt::format("{}{}: it is not sure that its skeins are one yarn. Two rows of "
                                "{} by turns, while both last, hide a change better than a join.",
                                wish.name, piece.empty() ? "" : " (" + piece + ")",
                                joined(skeins, " and ")),
                    2) +
            "\n";
    }
    return out;
}

std::string split_working(const Split& s, const Asked& asked) {
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
    for (const auto& c : {constants::worth_of_main, constants::worth_of_growth,
                          constants::worth_of_knowing, constants::worth_of_whole,
                          constants::unevenness, constants::read_error, constants::swatch_metres})
        out +=
            wrapped(fmt::format("{} = {:g} {} [{}]", c.name, c.value, c.unit, words(c.mark)), 6) +
            "\n";
    return out;
}

std::string split_text(const Split& s, const Asked& asked, const Question& q) {
    auto out = wrapped(batch_line(q), 0) + "\n\n";
    if (!s.found()) return out + impossible(s, asked, q);
    out += parts(s, asked, q) + "\n" + heading("Skeins") + "\n" + bars(s, q) + key(s, asked);
    out += "\n" + heading("Cut list, in the order to wind off") + "\n" + cut_list(s, asked, q);
    if (!s.unmet.empty()) out += "\n" + heading("Not made, and why") + "\n" + why_not(s, asked, q);
    const auto mind = wasteful(s, asked, q) + by_turns(s, asked, q);
    if (!mind.empty()) out += "\n" + heading("Mind") + "\n" + mind;
    return out + "\n" + stands_on(q.yarn) + proof(s.allocation) + "\n";
}

std::string split_json(const Split& s, const Asked& asked, const Question& q) {
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
    out["lacking"] = Json(nullptr);
    if (s.lacking)
        out["lacking"] = {{"skein", inert(q.yarn.skeins[s.lacking->skein].name)},
                          {"metres", number(double(s.lacking->length) / 100)}};
    return dumped(out);
}

Answer run(const Arguments& arguments) {
    auto q = ask(arguments, arguments.words.empty() ? "" : arguments.words[0]);
    Asked asked;
    ask_for(arguments, q, asked);
    const auto s = allocation::split(q.yarn, asked.request);
    const auto notes = joined(q.measured.notes, "\n");
    if (q.json) return {split_json(s, asked, q), notes};
    return {split_text(s, asked, q) + (q.working && s.found() ? split_working(s, asked) : ""),
            notes};
}

}  // namespace

Command split_command() {
    return {
        "split",
        "Samples and projects out of the same skeins: what each gets, what to wind off which "
        "skein, "
        "and why a wish was not met.",
        "[BATCH.toml | SKEINS.csv]",
        0,
        1,
        together(
            {{{"sample", "knitted:cables",
               "a knitted or woven sample, in the fabric named or "
               "the project's own",
               true},
              {"keep", "TEMPLATE", "the main project: must be made, as large as it can", true},
              {"piece", "TEMPLATE", "a further article, if it fits", true},
              {"from", "D", "take the samples from this skein only"},
              {"whole-warp", "", "wind every warp from one skein"},
              {"reserve", "5m", "keep this length for mending, in one skein"},
              {"join-cost", "high", "how much joins matter: low, usual or high"},
              {"loom-waste", "35cm", "of a woven sample's own warp"}},
             {{"certainty", "90", "wished chance that an article's metres suffice, 50 to 99.9 %"}},
             batch_options(),
             answer_options()}),
        run};
}

}  // namespace gristwright::cli
