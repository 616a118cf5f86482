#include "cli/commands/batch.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "catalog/nearest.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

// Reads and profiles the texts first: what makes no sense is not kept.
void check(const catalog::BatchText& text, bool insist) {
    const auto catalogue = whole_catalogue();
    profile(catalog::interpret(text, catalogue).batch, catalogue.yarn, insist);
}

constexpr std::size_t usual_most = 20;

// What a list tells of a batch. One that can no longer be read is named all the same.
struct Listed {
    std::string name;
    std::optional<Question> q;
    std::string wrong;
};

Listed listed(const Arguments& arguments, const catalog::NamedBatch& batch,
              const catalog::Catalogue& catalogue) {
    Listed out{batch.name, Question{}, ""};
    try {
        out.q->measured = catalog::interpret(batch.text, catalogue);
        out.q->yarn = profile(out.q->measured.batch, catalogue.yarn, true);
        out.q->units = units_of(arguments, out.q->measured.yards ? "imperial" : "metric");
    } catch (const Refused& error) {
        out = {batch.name, {}, error.what()};
    }
    return out;
}

std::string list_line(const Listed& one) {
    if (!one.q)
        return labelled(padded(inert(one.name), 16), "cannot be read: " + inert(one.wrong), 2) +
               "\n";
    const auto said = batch_line(*one.q);
    return fmt::format("  {} {}\n", padded(inert(one.name), 16), said.substr(said.find(": ") + 2));
}

Answer list(const Arguments& arguments) {
    const auto book = notebook(arguments, Notebook::Mode::read_only);
    const auto count = static_cast<std::size_t>(book.describe().batches);
    const bool json = arguments.has("json"), all = json || arguments.has("all");
    const auto catalogue = whole_catalogue();
    units_of(arguments, "metric");  // a wrong word is refused, not found in every batch
    std::string text;
    Json batches = Json::array();
    for (const auto& batch : book.newest_batches(all ? count : usual_most)) {
        const auto one = listed(arguments, batch, catalogue);
        if (json)
            batches.push_back(
                {{"name", inert(one.name)},
                 {"metres", one.q ? number(in_metres(one.q->yarn.length.mid)) : Json(nullptr)},
                 {"grams", one.q ? number(in_grams(one.q->yarn.mass)) : Json(nullptr)}});
        else
            text += list_line(one);
    }
    if (json) {
        auto out = json_answer("batch list");
        out["batches"] = batches;
        return {dumped(out), ""};
    }
    if (count == 0) return {"The notebook is empty: gristwright batch add NAME BATCH.toml\n", ""};
    if (!all && count > usual_most)
        text += fmt::format("and {} added before them: --all lists them\n", count - usual_most);
    return {text, ""};
}

std::string measured_line(const catalog::SwatchText& swatch) {
    std::vector<std::string> said;
    for (const auto& [key, value] : swatch.measured) said.push_back(key + " " + inert(value));
    if (!swatch.own_hands) said.emplace_back("not counted for your hands");
    if (!swatch.date.empty()) said.push_back(inert(swatch.date));
    const bool knitted = swatch.kind == catalog::SwatchText::Kind::knitted;
    return labelled(knitted ? "knitted swatch:" : "woven swatch:", joined(said), 2) + "\n";
}

std::string show_text(const Question& q, const catalog::BatchText& text, const Notebook& book,
                      const std::string& name) {
    auto out = wrapped(batch_line(q), 0) + "\n";
    for (const auto& skein : text.skeins)
        out += fmt::format("  {} {} / {}\n", padded(inert(skein.name.text), 12),
                           inert(skein.length.text), inert(skein.mass.text));
    for (const auto& [key, values] : text.fields)
        for (const auto& value : values)
            out += fmt::format("  {} {}\n", padded(key, 12), inert(value.text));
    for (const auto& swatch : book.swatches(name)) out += measured_line(swatch);
    if (const auto project = book.project(name))
        out +=
            labelled("begun:", inert(project->template_name) + " " + inert(project->started), 2) +
            "\n";
    if (const auto count = book.suggestions(name).size())
        out += fmt::format("  suggestions: {}, gristwright answer {}\n", count, inert(name));
    return out;
}

Json show_json(const Question& q, const Notebook& book, const std::string& name) {
    auto out = json_answer("batch show");
    out["batch"] = to_json(q);
    out["swatches"] = Json::array();
    for (const auto& swatch : book.swatches(name)) {
        Json measured = Json::object();
        for (const auto& [key, value] : swatch.measured) measured[key] = inert(value);
        out["swatches"].push_back(
            {{"kind", swatch.kind == catalog::SwatchText::Kind::knitted ? "knitted" : "woven"},
             {"date", inert(swatch.date)},
             {"own_hands", swatch.own_hands},
             {"measured", measured}});
    }
    const auto project = book.project(name);
    out["begun"] = project ? Json{{"template", inert(project->template_name)},
                                  {"size", inert(project->size)},
                                  {"started", inert(project->started)}}
                           : Json(nullptr);
    out["weighings"] = book.weighings(name).size();
    out["suggestions"] = book.suggestions(name).size();
    return out;
}

Answer show(const Arguments& arguments, const std::string& name) {
    const auto book = notebook(arguments, Notebook::Mode::read_only);
    const auto text = book.load_batch(name);
    const auto q = ask(arguments, name, Skeins::all);
    return {q.json ? dumped(show_json(q, book, name)) : show_text(q, text, book, name), ""};
}

Answer run(const Arguments& arguments) {
    const auto& words = arguments.words;
    const std::vector<std::string> known{"add", "list", "show", "change", "remove"};
    if (std::find(known.begin(), known.end(), words[0]) == known.end())
        throw Misused(fmt::format("batch takes add, list, show, change or remove, not '{}'{}",
                                  words[0], catalog::did_you_mean(words[0], known)));
    if (words[0] == "list") return list(arguments);
    if (words.size() < 2) throw Misused(fmt::format("batch {} needs the batch's name", words[0]));
    const auto& name = words[1];
    if (words[0] == "show") return show(arguments, name);
    auto book = notebook(arguments, Notebook::Mode::change);
    if (words[0] == "add") {
        if (!is_remembered(name))
            throw Refused(fmt::format(
                "a batch's name holds no dot and no '/', so '{}' would be taken for a file",
                inert(name)));
        const auto text = batch_text(arguments, words.size() > 2 ? words[2] : "");
        check(text, arguments.has("insist"));
        book.add_batch(name, text);
        return {fmt::format("{} is in the notebook.\n", inert(name)), ""};
    }
    if (words[0] == "change") {
        auto text = book.load_batch(name);
        const auto overlay = batch_text(arguments, words.size() > 2 ? words[2] : "");
        text.overlay(overlay);
        check(text, arguments.has("insist"));
        book.change_batch(name, overlay);
        return {fmt::format("{} is changed; gristwright undo takes it back.\n", inert(name)), ""};
    }
    book.remove_batch(name);
    return {fmt::format("{} is gone from the notebook; gristwright undo brings it back.\n",
                        inert(name)),
            ""};
}

}  // namespace

Command batch_command() {
    return {"batch",
            "Remembered batches. A remembered batch's name may stand wherever a batch file may.",
            "add NAME [BATCH.toml | SKEINS.csv] | list | show NAME | change NAME | remove NAME",
            1,
            3,
            together({{{"all", "", "list every batch, not the twenty added last"}},
                      batch_options(),
                      {units_option, json_option}}),
            run,
            "add heron heron.toml"};
}

}  // namespace gristwright::cli
