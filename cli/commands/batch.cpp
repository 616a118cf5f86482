#include "cli/commands/batch.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "catalog/text/nearest.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/next.hpp"
#include "cli/yarns.hpp"
#include "engine/project/order.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

// Reads and profiles the texts first: what makes no sense is not kept.
void check(const catalog::BatchText& text, const catalog::Catalogue& catalogue, bool insist) {
    likely_yarn(catalog::interpret(text, catalogue), catalogue, insist);
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
    const auto catalogue = catalog::built_in();
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

// " wraps 14wpi colour teal": what a skein says of itself.
std::string own_line(const catalog::SkeinText& skein) {
    std::string out;
    for (const auto& [key, texts] : skein.own)
        for (const auto& text : texts) out += fmt::format(" {} {}", key, inert(text.text));
    return out;
}

std::string show_text(const Question& q, const catalog::BatchText& text, const Notebook& book,
                      const std::string& name) {
    auto out = wrapped(batch_line(q), 0) + "\n";
    for (const auto& skein : text.skeins)
        out += fmt::format("  {} {} / {}{}\n", padded(inert(skein.name.text), 12),
                           inert(skein.length.text), inert(skein.mass.text), own_line(skein));
    for (const auto& [key, values] : text.fields)
        for (const auto& value : values)
            out += fmt::format("  {} {}\n", padded(key, 12), inert(value.text));
    for (const auto& swatch : book.swatches(name)) out += measured_line(swatch);
    if (const auto project = book.project(name))
        out += labelled("begun:",
                        inert(project->template_name) +
                            (project->part.empty() ? "" : " as " + inert(project->part)) +
                            (project->beside.empty() ? "" : " with " + inert(project->beside)) +
                            " " + inert(project->started),
                        2) +
               "\n";
    if (const auto count = book.suggestions(name).size())
        out += fmt::format("  suggestions: {}, gristwright answer {}\n", count, inert(name));
    return out;
}

// In the order of work, as a weighing names them.
std::vector<std::string> pieces_worked(const catalog::Catalogue& catalogue,
                                       const std::string& article) {
    std::vector<std::string> out;
    const auto* found = catalogue.template_named(article);
    if (!found) return out;
    for (const auto& [piece, which] : order_of_work(*found)) {
        const auto& one = found->pieces[piece];
        out.push_back(one.count > 1 ? fmt::format("{} {}", one.name, which) : one.name);
    }
    return out;
}

Json show_json(const Question& q, const Notebook& book, const std::string& name) {
    auto out = json_answer("batch show");
    out["batch"] = whole_to_json(q);
    for (const auto& one : of_each_yarn(q)) out["yarns"].push_back(to_json(one));
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
    out["begun"] =
        project ? Json{{"template", inert(project->template_name)},
                       {"size", inert(project->size)},
                       {"started", inert(project->started)},
                       {"pieces", texts(pieces_worked(*q.catalogue, project->template_name))}}
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

// "2 skeins (139m/38.5g, 163m/45.0g)".
std::string skeins_of(const catalog::BatchText& text) {
    std::vector<std::string> out;
    for (const auto& skein : text.skeins)
        out.push_back(inert(skein.length.text) + "/" + inert(skein.mass.text));
    const auto count = out.size();
    constexpr std::size_t most = 6;
    if (count > most) out.resize(most), out.emplace_back("...");
    return fmt::format("{} skein{} ({})", count, count == 1 ? "" : "s", joined(out));
}

std::string texts_of(const std::vector<catalog::Written>& all) {
    std::vector<std::string> out;
    for (const auto& one : all) out.push_back(inert(one.text));
    return joined(out);
}

// What the change put something else in the place of; what it leaves as it was is not told.
std::string replaced(const catalog::BatchText& before, const catalog::BatchText& overlay) {
    std::string out;
    if (!overlay.skeins.empty() && skeins_of(overlay) != skeins_of(before))
        out +=
            labelled("-", fmt::format("{} in place of {}", skeins_of(overlay), skeins_of(before)),
                     2) +
            "\n";
    for (const auto& [key, now] : overlay.fields) {
        const auto was = before.fields.find(key);
        if (was != before.fields.end() && texts_of(was->second) == texts_of(now)) continue;
        const auto said =
            was == before.fields.end() || was->second.empty()
                ? fmt::format("{}: {}, where nothing was", key, texts_of(now))
                : fmt::format("{}: {} in place of {}", key, texts_of(now), texts_of(was->second));
        out += labelled("-", said, 2) + "\n";
    }
    return out;
}

// A batch goes by the name that finds it; another one in its file or options is not kept.
std::string one_name(catalog::BatchText& text, const std::string& name) {
    const auto found = text.fields.find("name");
    if (found == text.fields.end() || found->second.empty()) return "";
    const auto other = found->second.front().text;
    if (same_name(other, name)) return "";
    text.fields.erase(found);
    return fmt::format("it goes by the name '{}' from now on, not '{}'", name, other);
}

// What was kept, as the next command will find it.
std::string read_back(const Arguments& typed, const std::string& name) {
    auto where = typed;
    std::erase_if(where.options, [](const auto& option) {
        return option.first != "notebook" && option.first != "insist";
    });
    where.words = {name};
    return wrapped(batch_line(ask(where, name, Skeins::all)), 0) + "\n" +
           next_line({"makes"}, name, where);
}

Answer add(const Arguments& arguments, const std::string& name) {
    if (!is_remembered(name))
        throw Refused(
            fmt::format("a batch's name holds no dot and no '/', so '{}' would be taken for a file",
                        inert(name)));
    const auto catalogue = catalog::built_in();
    auto text = batch_text(arguments, arguments.words.size() > 2 ? arguments.words[2] : "",
                           catalogue.spoken);
    const auto note = one_name(text, name);
    check(text, catalogue, arguments.has("insist"));
    notebook(arguments, Notebook::Mode::change).add_batch(name, text);
    return {fmt::format("{} is in the notebook.\n", inert(name)) + read_back(arguments, name), note,
            0, kept_already};
}

Answer change(const Arguments& arguments, const std::string& name) {
    const auto catalogue = catalog::built_in();
    auto overlay = batch_text(arguments, arguments.words.size() > 2 ? arguments.words[2] : "",
                              catalogue.spoken);
    const auto note = one_name(overlay, name);
    auto book = notebook(arguments, Notebook::Mode::change);
    std::string said;
    book.at_once([&] {
        auto text = book.load_batch(name);
        said = replaced(text, overlay);
        if (said.empty()) return;
        text.overlay(overlay);
        check(text, catalogue, arguments.has("insist"));
        book.change_batch(name, overlay);
    });
    if (said.empty())
        return {fmt::format("{} is as it was: nothing that was given is new.\n", inert(name)),
                note};
    return {fmt::format("{} is changed; gristwright undo takes it back.\n", inert(name)) + said,
            note, 0, kept_already};
}

Answer remove(const Arguments& arguments, const std::string& name) {
    notebook(arguments, Notebook::Mode::change).remove_batch(name);
    return {fmt::format("{} is gone from the notebook; gristwright undo brings it back.\n",
                        inert(name)),
            "", 0, kept_already};
}

// What each word after batch does, and how many words it takes in all.
struct Way {
    std::string_view word;
    std::size_t most_words;
    Answer (*run)(const Arguments&, const std::string& name);
};
constexpr Way ways[] = {
    {"add", 3, add},       {"change", 3, change}, {"list", 1, nullptr},
    {"remove", 2, remove}, {"show", 2, show},
};

Answer run_batch(const Arguments& arguments) {
    const auto& words = arguments.words;
    std::vector<std::string> known;
    for (const auto& way : ways) {
        known.emplace_back(way.word);
        if (words[0] != way.word) continue;
        if (words.size() > way.most_words)
            throw Misused(fmt::format("batch {} takes {}, so '{}' is one too many", way.word,
                                      way.most_words == 1 ? "no name" : "one name",
                                      words[way.most_words]));
        if (!way.run) return list(arguments);
        if (words.size() < 2)
            throw Misused(fmt::format("batch {} needs the batch's name", words[0]));
        return way.run(arguments, words[1]);
    }
    throw Misused(fmt::format("batch takes add, list, show, change or remove, not '{}'{}", words[0],
                              catalog::did_you_mean(words[0], known)));
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
            run_batch,
            "add heron heron.toml"};
}

}  // namespace gristwright::cli
