#include "cli/commands/answer.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "catalog/text/csv.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "cli/bulk_answers.hpp"
#include "cli/out_file.hpp"
#include "cli/output/answer_lines.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/output/next.hpp"
#include "cli/output/reply.hpp"
#include "cli/output/taken.hpp"
#include "engine/suggestion/constants.hpp"
#include "engine/suitability/reasons.hpp"

namespace gristwright::cli {
namespace {

constexpr std::size_t listed = 20;  // of the ranked list as text

// --- one suggestion

std::string basis_words(const SuggestionAnswer& a) {
    switch (a.basis) {
        case SuggestionAnswer::Basis::stated_length:
            return "from the length that was stated";
        case SuggestionAnswer::Basis::stated_mass:
            return "from the mass that was stated, by its own grist";
        case SuggestionAnswer::Basis::template_plan:
            break;
    }
    return "from our own template, since no amount was stated";
}

std::string needle_line(const Suggestion& s, const SuggestionAnswer& a, const Question& q) {
    const auto& owned = q.measured.owned.needles;
    const auto needle = s.needle ? s.needle : a.taken.needle;
    if (!needle || owned.empty()) return "";
    const auto nearest = *std::min_element(owned.begin(), owned.end(), [&](Length x, Length y) {
        return std::abs((x - *needle).si()) < std::abs((y - *needle).si());
    });
    return labelled("Needle: ",
                    fmt::format("{} was said; of yours the nearest is {}", q.units.needle(*needle),
                                q.units.needle(nearest)),
                    0) +
           "\n";
}

std::string numbers_text(const SuggestionAnswer& a, const Question& q) {
    auto out = labelled("Yarn:   ",
                        fmt::format("{} needed ({}), {} to hand: {}; chance that they reach {}",
                                    q.units.yarn_range(a.need), basis_words(a),
                                    q.units.yarn(q.yarn.length.mid), metres_verdict(a, q.units),
                                    percent(a.certainty)),
                        0) +
               "\n";
    if (a.reach == Reach::enough_if_smaller)
        out += labelled("Smaller:",
                        fmt::format("{} {} fits, not {}", a.article->measure,
                                    q.units.size(a.size_that_fits), q.units.size(a.size)),
                        0) +
               "\n";
    if (a.fewer_repeats > 0)
        out += labelled("Repeats:",
                        fmt::format("{} fewer repeat{} of the pattern come to about that",
                                    a.fewer_repeats, a.fewer_repeats == 1 ? "" : "s"),
                        0) +
               "\n";
    if (a.largest_offered.si() > 0)
        out += labelled("Sizes:  ",
                        fmt::format("of those it comes in {} is the largest that fits",
                                    q.units.size(a.largest_offered)),
                        0) +
               "\n";
    if (a.spin_more.si() > 0)
        out += labelled("Or spin:",
                        fmt::format("{} of fibre more, {:.0f} % losses included",
                                    q.units.mass(a.spin_more), 100 * constants::spinning_losses),
                        0) +
               "\n";
    if (a.other_craft_reaches)
        out += labelled("Or:     ",
                        fmt::format("a {} {}: the yarn would reach",
                                    a.article->craft == Craft::knitted ? "woven" : "knitted",
                                    a.article->article),
                        0) +
               "\n";
    if (a.tightness > 0)
        out +=
            labelled(
                "Gauge:  ",
                fmt::format(
                    "tightness {:.2f} at the {}{}", a.tightness,
                    a.gauge_of_class ? "usual gauge of that weight" : "gauge that was stated",
                    a.stitches_kept ? fmt::format("; {} suits, and with the stitches kept the {} "
                                                  "becomes {}",
                                                  q.units.stitch_gauge(a.suiting),
                                                  a.article->measure, q.units.size(a.size))
                                    : ", which this yarn can keep"),
                0) +
            "\n";
    if (a.share > 0)
        out += labelled(
                   "Sett:   ",
                   fmt::format("{:.0f} % of the greatest; {:.0f} to {:.0f} % suits", 100 * a.share,
                               100 * a.suiting_share.low, 100 * a.suiting_share.high),
                   0) +
               "\n";
    return out;
}

Plan shown_plan(const SuggestionAnswer& a, const Question& q) {
    auto request = q.request;
    request.size = a.article->ideal;
    return plan(*a.article, q.yarn, q.catalogue.fabrics, q.measured.owned, request);
}

std::string reasons_text(const SuggestionAnswer& a, const Question& q) {
    const auto planned = shown_plan(a, q);
    std::string out;
    const auto con = against(a.judgement, planned, q.yarn);
    const auto pro = in_favour(a.judgement, q.yarn);
    if (!pro.empty()) out += labelled("For:    ", joined(pro), 0) + "\n";
    if (!con.empty()) out += labelled("Against:", joined(con), 0) + "\n";
    const auto& definition = a.judgement.factor(FactorName::definition);
    if (definition.weight > 0)
        out += labelled("Stitches:", sentence(FactorName::definition, a.judgement, planned, q.yarn),
                        0) +
               "\n";
    for (const auto obstacle : a.obstacles)
        out += labelled("In the way:", words(obstacle), 0) + "\n";
    return out;
}

std::string working(const SuggestionAnswer& a) {
    auto out = "\n" + heading("Working") + "\n";
    for (const auto& c :
         {constants::stated_amount, constants::gauge_slack, constants::spinning_losses})
        out += wrapped(fmt::format("{} = {:g} {} ({:g} to {:g}) [{}{}{}]", c.name, c.value, c.unit,
                                   c.low, c.high, words(c.mark), c.source.empty() ? "" : ": ",
                                   c.source),
                       2) +
               "\n";
    for (std::size_t f = 0; a.answered && f < factor_count; ++f) {
        const auto& factor = a.judgement.factors[f];
        if (factor.weight > 0)
            out += fmt::format("  {:<14}had {:.2f}  wanted {:.2f}  weight {:.1f}  costs {:.0f}\n",
                               words(static_cast<FactorName>(f)), factor.had, factor.wanted,
                               factor.weight, factor.cost);
    }
    return out;
}

// On what was understood, for whom it was suggested.
std::vector<Caution> cautions_on_answer(const Suggestion& s, const SuggestionAnswer& a,
                                        const Question& q) {
    if (!a.answered) return {};
    return cautions_on(q, {&*a.article}, s.idea + " " + s.who);
}

std::string reply_with_care(const Suggestion& s, const SuggestionAnswer& a, const Question& q) {
    return with_care(reply(s, a, q.yarn, q.units), cautions_on_answer(s, a, q), reply_length);
}

// What is not known comes first, in the verdict as in the reply.
std::string verdict_words(const SuggestionAnswer& a, const Units& units) {
    const auto lacking = left_out(a);
    return fmt::format("{}{}; {}", lacking.empty() ? "" : "not reckoned: " + joined(lacking) + "; ",
                       words(serves(a.judgement.score)), metres_verdict(a, units));
}

std::string one_text(const Suggestion& s, const SuggestionAnswer& a, const Question& q) {
    auto out = wrapped(batch_line(q), 0) + "\n\n" +
               labelled("Idea:   ", inert(first_bytes(s.idea, 400)), 0) + "\n" +
               labelled("Taken:  ", taken_line(a, q.units), 0) + "\n";
    if (!a.answered)
        return out + (a.ask.empty() ? "" : labelled("Asked back:", a.ask, 0) + "\n") + "\n" +
               heading("A reply to paste") + "\n" + wrapped(reply(s, a, q.yarn, q.units), 2) + "\n";
    out += labelled("Verdict:", verdict_words(a, q.units), 0) + "\n\n" + numbers_text(a, q) +
           needle_line(s, a, q) + reasons_text(a, q) + care_line(cautions_on_answer(s, a, q)) +
           stands_on(q.yarn);
    return out + "\n" + heading("A reply to paste") + "\n" + wrapped(reply_with_care(s, a, q), 2) +
           "\n";
}

// The article that the idea was answered with, in full.
std::string plan_next(const SuggestionAnswer& a, const std::string& batch,
                      const Arguments& arguments) {
    if (!a.answered) return "";
    return "\n" + next_line({"plan", a.article->name}, batch, arguments);
}

std::vector<std::string> not_known(const SuggestionAnswer& a) {
    std::vector<std::string> out;
    for (const auto& unmade : a.taken.not_known) out.push_back(unmade.said);
    return out;
}

Json answer_json(const Suggestion& s, const SuggestionAnswer& a, const Question& q) {
    Json out{{"idea", inert(first_bytes(s.idea, 400))},
             {"answered", a.answered},
             {"ask", inert(a.ask)},
             {"article", a.answered ? a.article->article : ""},
             {"unknown_words", texts(not_known(a))},
             {"template", a.answered ? Json(a.article->name) : Json(nullptr)},
             {"craft", a.answered ? Json(words(a.article->craft)) : Json(nullptr)}};
    if (a.answered) {
        out["fabric"] = a.fabric;
        out["suitability"] = number(a.judgement.score);
        out["serves"] = words(serves(a.judgement.score));
        out["reach"] = words(a.reach);
        out["certainty"] = number(a.certainty);
        out["metres_needed"] = number(in_metres(a.need.mid));
        out["metres_left"] = number(in_metres(a.left));
        out["metres_short"] = number(in_metres(a.short_by));
        out["size_cm"] = number(in_centimetres(a.size));
        out["grams_to_spin"] = number(in_grams(a.spin_more));
    }
    out["cautions"] = texts(whole(cautions_on_answer(s, a, q)));
    out["taken"] = taken_json(a);
    out["reply"] = inert(reply_with_care(s, a, q));
    return out;
}

// --- hundreds

std::string cell(const std::string& text) { return catalog::csv_cell(inert(text)); }

// What the rows of a group share.
std::string csv_answer(const BulkAnswers::Group& group, const SuggestionAnswer& a,
                       const Question& q) {
    std::string out;
    if (a.answered)
        out = fmt::format("{},{},{:.0f},{},{},{:.0f},{:.0f},{:.0f},{:.3f},",
                          cell(a.article->article), words(a.article->craft), a.judgement.score,
                          cell(std::string(words(serves(a.judgement.score)))), cell(group.verdict),
                          in_metres(a.need.mid), in_metres(a.left), in_metres(a.short_by),
                          a.certainty);
    else
        out = ",,,," + cell(group.verdict) + ",,,,,";
    return out + cell(joined(briefs(cautions_on_answer(group.suggestion, a, q)), "; ")) + "," +
           cell(reply_with_care(group.suggestion, a, q)) + "\n";
}

// A row for every sender: each gets a reply.
std::string as_csv(BulkAnswers& bulk, const Question& q) {
    std::string out =
        "row,times,idea,from,article,craft,suitability,serves,metres,metres_needed,metres_left,"
        "metres_short,chance,care,reply\n";
    for (const auto& group : bulk.ranked()) {
        const auto a = bulk.answer(group.suggestion);
        const auto answer = csv_answer(group, a, q);
        for (std::size_t i = 0; i < group.rows.size(); ++i)
            out += fmt::format("{},{},{},{},", group.rows[i], group.rows.size(),
                               cell(group.ideas[i]), cell(group.senders[i])) +
                   answer;
    }
    return out;
}

std::string bulk_json(BulkAnswers& bulk, const Question& q) {
    auto out = json_answer("answer");
    out["rows"] = bulk.rows();
    out["rows_refused"] = bulk.bad();
    out["answers"] = Json::array();
    for (const auto& group : bulk.ranked()) {
        auto one = answer_json(group.suggestion, bulk.answer(group.suggestion), q);
        one["row"] = group.rows.front();
        one["rows"] = group.rows;
        one["times"] = group.rows.size();
        out["answers"].push_back(std::move(one));
    }
    return dumped(out);
}

std::string bulk_text(BulkAnswers& bulk, const Question& q, bool all) {
    const auto ranked = bulk.ranked();
    auto out = wrapped(batch_line(q), 0) + "\n\n" +
               fmt::format("{} suggestion{}, {} of them different{}\n\n", bulk.rows(),
                           bulk.rows() == 1 ? "" : "s", ranked.size(),
                           bulk.bad() > 0 ? fmt::format(", {} row{} refused", bulk.bad(),
                                                        bulk.bad() == 1 ? "" : "s")
                                          : "");
    const auto most = all ? ranked.size() : std::min(listed, ranked.size());
    out += answer_lines(bulk, most, q);
    if (ranked.size() > most)
        out += fmt::format("and {} more: --all lists them, --out FILE keeps them\n",
                           ranked.size() - most);
    return out;
}

// The replies are in the file that --out writes.
std::string replies_next(const Arguments& arguments) {
    std::vector<std::string> words{"answer"};
    words.insert(words.end(), arguments.words.begin(), arguments.words.end());
    words.insert(words.end(), {"--out", "replies.csv"});
    return "\n" + next_line(words, "", arguments);
}

constexpr int some_rows_bad = 65;

Answer answer_many(const Arguments& arguments, const Question& q, BulkAnswers& bulk,
                   const std::string& file) {
    std::vector<std::string> notes = q.measured.notes;
    for (const auto& note : bulk.notes()) notes.push_back(fmt::format("{}: {}", file, note));
    for (const auto& complaint : bulk.complaints())
        notes.push_back(fmt::format("{} {}", file, complaint));
    if (bulk.bad() > bulk.complaints().size())
        notes.push_back(fmt::format("and {} rows more", bulk.bad() - bulk.complaints().size()));
    const int code = bulk.bad() > 0 ? some_rows_bad : 0;
    if (arguments.has("out")) {
        const auto file = out_file(arguments);
        const auto& out = file.path;
        const bool json = out.size() > 5 && out.substr(out.size() - 5) == ".json";
        auto said =
            written(file, json ? bulk_json(bulk, q) : as_csv(bulk, q),
                    fmt::format("{} suggestions answered in '{}'", bulk.rows(), inert(out)), notes);
        said.exit_code = code;
        return said;
    }
    return {q.json ? bulk_json(bulk, q)
                   : bulk_text(bulk, q, arguments.has("all")) + replies_next(arguments),
            joined(notes, "\n"), code};
}

// The batch has options of these names already.
std::string_view option_for(std::string_view key) {
    if (key == "needle") return "with-needle";
    if (key == "gauge") return "at-gauge";
    return key == "from" ? "by" : key;
}

void need_remembered(const std::string& batch, std::string_view option) {
    if (is_remembered(batch)) return;
    throw Misused(fmt::format(
        "--{} is for a remembered batch: gristwright batch add NAME BATCH.toml", option));
}

void remember(const Arguments& arguments, const std::string& batch,
              const std::vector<catalog::KeptSuggestion>& all) {
    if (arguments.has("remember") && !all.empty())
        notebook(arguments, catalog::Notebook::Mode::change).add_suggestions(batch, all);
}

Answer answer_file(const Arguments& arguments, const Question& q, const std::string& batch,
                   const std::string& file) {
    BulkAnswers bulk(q, arguments.has("remember"));
    bulk.read(file);
    remember(arguments, batch, bulk.good());
    return answer_many(arguments, q, bulk, file);
}

Answer answer_remembered(const Arguments& arguments, const Question& q, const std::string& batch) {
    const auto kept = notebook(arguments, catalog::Notebook::Mode::read_only).suggestions(batch);
    if (kept.empty())
        throw Misused(fmt::format(
            "no suggestions are remembered with {}: answer needs --idea \"lace shawl\", or a "
            "spreadsheet of suggestions; --remember keeps them",
            batch));
    BulkAnswers bulk(q);
    bulk.take_all(kept);
    return answer_many(arguments, q, bulk, batch);
}

Answer forget(const Arguments& arguments, const std::string& batch) {
    need_remembered(batch, "forget");
    notebook(arguments, catalog::Notebook::Mode::change).remove_suggestions(batch);
    return {fmt::format("The suggestions to {} are forgotten; gristwright undo brings them back.\n",
                        inert(batch)),
            "", 0, kept_already};
}

Answer run(const Arguments& arguments) {
    std::string batch, file;
    for (const auto& word : arguments.words)
        (batch.empty() && !arguments.has("skein") ? batch : file) = word;
    if (arguments.has("out")) out_file(arguments);  // refused before the work
    if (arguments.has("forget")) return forget(arguments, batch);
    if (arguments.has("remember")) need_remembered(batch, "remember");
    const auto q = ask(arguments, batch);
    if (!file.empty()) return answer_file(arguments, q, batch, file);
    if (!arguments.has("idea") && is_remembered(batch))
        return answer_remembered(arguments, q, batch);
    catalog::SuggestionText text;
    for (const auto key : suggestion_fields)
        if (arguments.has(option_for(key)))
            text[std::string(key)] = arguments.text(option_for(key));
    if (text.find("idea") == text.end())
        throw Misused("answer needs --idea \"lace shawl\", or a spreadsheet of suggestions");
    const auto s = catalog::read_suggestion(text, q.catalogue.yarn.classes);
    remember(arguments, batch, {text});
    Answerer answerer(ground_of(q));
    const auto a = answerer.answer(s);
    const auto notes = joined(q.measured.notes, "\n");
    if (!q.json)
        return {one_text(s, a, q) + (q.working ? working(a) : "") + plan_next(a, batch, arguments),
                notes};
    auto out = json_answer("answer");
    out["rows"] = 1;
    out["rows_refused"] = 0;
    auto one = answer_json(s, a, q);
    one["row"] = 1;
    one["rows"] = Json::array({1});
    one["times"] = 1;
    out["answers"] = Json::array({one});
    return {dumped(out), notes};
}

}  // namespace

Command answer_command() {
    return {
        "answer",
        "People's suggestions answered with numbers and a reply to paste; one, or a "
        "spreadsheet of hundreds, ranked.",
        "[BATCH.toml | SKEINS.csv] [SUGGESTIONS.csv]",
        0,
        2,
        together({{{"idea", "\"lace shawl\"", "what somebody suggests, in their words"},
                   {"needs", "440yd", "yarn it is said to need, as a length or a mass"},
                   {"weight", "fine", "weight class of the yarn it was meant for"},
                   {"grist", "400m/100g", "grist of the yarn it was meant for"},
                   {"at-gauge", "24st/10cm", "stocking-stitch gauge it was meant for"},
                   {"sett", "12epi", "sett it was meant for"},
                   {"with-needle", "4mm", "needle it was meant for"},
                   {"size", "150cm", "finished size, as the article is measured"},
                   {"sizes", "100,130,160cm", "the sizes it comes in"},
                   {"colours", "2", "how many colours it takes"},
                   {"craft", "woven", "knitted or woven", false, "knitted|woven"},
                   {"who", "child", "for whom: a baby, a child, a dog; sizes and cautions follow"},
                   {"by", "a guild friend", "who suggested it; kept, not interpreted"},
                   {"when", "2026-11-02", "kept, not interpreted"},
                   {"remember", "", "keep the suggestions with the remembered batch"},
                   {"forget", "", "forget those that are kept with it"},
                   {"all", "", "list every answer, not the first twenty"}},
                  out_options("answers.csv", "write all answers to this file, .csv or .json"),
                  plan_options(),
                  batch_options(),
                  answer_options()}),
        run,
        "heron.toml --idea \"lace shawl\" --needs 440yd"};
}

}  // namespace gristwright::cli
