#include "cli/commands/answer.hpp"

#include <fmt/core.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <utility>

#include "catalog/text/file.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "cli/out_file.hpp"
#include "cli/output/answer_words.hpp"
#include "cli/output/answers_many.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/next.hpp"
#include "engine/units/ascii.hpp"
#include "engine/units/plain.hpp"

namespace gristwright::cli {
namespace {

// The article that the idea was answered with, in full.
std::string plan_next(const SuggestionAnswer& a, const std::string& batch,
                      const Arguments& arguments) {
    if (!a.answered) return "";
    return "\n" + next_line({"plan", a.article->name}, batch, arguments);
}

// The replies are in the file that --out writes.
std::string replies_next(const Arguments& arguments) {
    std::vector<std::string> words{"answer"};
    words.insert(words.end(), arguments.words.begin(), arguments.words.end());
    words.insert(words.end(), {"--out", "replies.csv"});
    return "\n" + next_line(words, "", arguments);
}

constexpr int some_rows_bad = 65;

// A name without an end holds CSV; any other end would say what is not in it.
bool is_json_file(const std::string& out) {
    const auto end = ascii::lowered(std::filesystem::path(out).extension().string());
    if (end == ".json") return true;
    if (end.empty() || end == ".csv") return false;
    throw Misused(fmt::format("answers are written as a .csv or .json file, not as '{}'{}",
                              inert(out),
                              end == ".html" ? "; gristwright page makes a page of them" : ""));
}

// Every row stands in the file, answered or not.
std::string what_is_written(const BulkAnswers& bulk, const std::string& out) {
    auto said = fmt::format("{} suggestion{} in '{}'", bulk.rows(), bulk.rows() == 1 ? "" : "s",
                            inert(out));
    std::vector<std::string> parts;
    const auto add = [&](std::size_t count, const char* what) {
        if (count > 0) parts.push_back(fmt::format("{} {}", count, what));
    };
    const auto not_answered = bulk.bad() + bulk.asked_back();
    if (not_answered == 0) return said + (bulk.rows() == 1 ? ", answered" : ", each answered");
    add(bulk.rows() - not_answered, "answered");
    add(bulk.asked_back(), "asked back");
    add(bulk.bad(), "could not be read");
    return said + ": " + joined(parts);
}

Answer answer_many(const Arguments& arguments, const Question& q, BulkAnswers& bulk,
                   const std::string& file) {
    std::vector<std::string> notes = q.measured.notes;
    for (const auto& note : bulk.notes()) notes.push_back(fmt::format("{}: {}", file, note));
    for (const auto& complaint : bulk.complaints())
        notes.push_back(fmt::format("{} {}", file, complaint));
    if (bulk.more_complaints() > 0)
        notes.push_back(fmt::format("and {} more of the kind", bulk.more_complaints()));
    const int code = bulk.all_read() ? 0 : some_rows_bad;
    if (arguments.has("out")) {
        const auto file = out_file(arguments);
        const auto& out = file.path;
        auto said = written(file, is_json_file(out) ? answers_json(bulk, q) : answers_csv(bulk, q),
                            what_is_written(bulk, out), notes);
        said.exit_code = code;
        return said;
    }
    return {q.json ? whole(answers_json(bulk, q))
                   : answers_text(bulk, q, arguments.has("all")) + replies_next(arguments),
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
        throw Misused(
            fmt::format("no suggestions are remembered with {}: answer needs --idea \"lace "
                        "shawl\", or a spreadsheet of suggestions; --remember keeps them",
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

// "answer heron.toml 'knit a cabled hat'": words with a space that no file is called are an idea;
// one word may be either.
bool is_an_idea(const std::string& word) {
    std::error_code none;
    if (word.empty() || catalog::is_named_as_a_sheet(word) || std::filesystem::exists(word, none))
        return false;
    if (word.find(' ') != std::string::npos) return true;
    throw Misused(fmt::format("there is no spreadsheet '{0}'; an idea is typed as --idea \"{0}\"",
                              inert(word)));
}

// The size is the suggestion's own, and may be said in words: "adult M".
Arguments without_size(Arguments arguments) {
    arguments.options.erase("size");
    return arguments;
}

Answer run_answer(const Arguments& arguments) {
    std::string batch, file, typed;
    for (const auto& word : arguments.words)
        (batch.empty() && !arguments.has("skein") ? batch : file) = word;
    if (is_an_idea(file)) {
        if (arguments.has("idea"))
            throw Misused(fmt::format("two ideas: '{}' and --idea", inert(file)));
        typed = std::exchange(file, "");
    }
    if (arguments.has("out")) is_json_file(out_file(arguments).path);  // refused before the work
    if (arguments.has("forget")) return forget(arguments, batch);
    if (arguments.has("remember")) need_remembered(batch, "remember");
    const auto q = ask(without_size(arguments), batch);
    if (!file.empty()) return answer_file(arguments, q, batch, file);
    if (!arguments.has("idea") && typed.empty() && is_remembered(batch))
        return answer_remembered(arguments, q, batch);
    catalog::SuggestionText text;
    for (const auto key : suggestion_fields)
        if (arguments.has(option_for(key)))
            text[std::string(key)] = arguments.text(option_for(key));
    if (!typed.empty()) text["idea"] = typed;
    if (plain(text["idea"]).find_first_not_of(' ') == std::string::npos)
        throw Misused("answer needs --idea \"lace shawl\", or a spreadsheet of suggestions");
    const auto s = catalog::read_suggestion(text, *q.catalogue);
    remember(arguments, batch, {text});
    if (arguments.has("out")) {
        BulkAnswers one(q);
        one.take_all({text});
        return answer_many(arguments, q, one, "");
    }
    Answerer answerer(ground_of(q));
    const auto a = answerer.answer(s);
    auto said = q.measured.notes;
    if (!typed.empty()) said.push_back(fmt::format("taken as the idea: '{}'", inert(typed)));
    const auto notes = joined(said, "\n");
    if (!q.json)
        return {answer_text(s, a, q) + (q.working ? answer_working(a) : "") +
                    plan_next(a, batch, arguments),
                notes};
    auto out = json_answer("answer");
    out["rows"] = 1;
    out["rows_refused"] = 0;
    out["refused"] = out["left_out"] = Json::array();
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
        "People's suggestions answered with numbers and a reply to paste; one, or a spreadsheet of "
        "hundreds, ranked.",
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
                   {"size", "150cm", "finished size: a length, 60 x 8 in, adult M, 6-12 months"},
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
        run_answer,
        "heron.toml --idea \"lace shawl\" --needs 440yd"};
}

}  // namespace gristwright::cli
