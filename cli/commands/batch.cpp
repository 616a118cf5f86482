#include "cli/commands/batch.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/nearest.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

// Reads and profiles the texts first: what makes no sense is not kept.
void check(const catalog::BatchText& text, bool insist) {
    const auto catalogue = whole_catalogue();
    profile(catalog::interpret(text, catalogue).batch, catalogue.yarn, insist);
}

std::string line(const std::string& name, const Question& q) {
    return fmt::format("  {} {}\n", padded(name, 16),
                       batch_line(q).substr(batch_line(q).find(':') + 2));
}

Answer list(const Arguments& arguments) {
    const auto names = notebook(arguments, Notebook::Mode::read_only).batch_names();
    std::string out;
    for (const auto& name : names) out += line(inert(name), ask(arguments, name));
    return {names.empty() ? "The notebook is empty: gristwright batch add NAME BATCH.toml\n" : out,
            ""};
}

Answer show(const Arguments& arguments, const std::string& name) {
    const auto book = notebook(arguments, Notebook::Mode::read_only);
    const auto text = book.load_batch(name);
    const auto q = ask(arguments, name);
    auto out = wrapped(batch_line(q), 0) + "\n";
    for (const auto& skein : text.skeins)
        out += fmt::format("  {} {} / {}\n", padded(inert(skein.name.text), 12),
                           inert(skein.length.text), inert(skein.mass.text));
    for (const auto& [key, values] : text.fields)
        for (const auto& value : values)
            out += fmt::format("  {} {}\n", padded(key, 12), inert(value.text));
    for (const auto& swatch : book.swatches(name)) {
        std::vector<std::string> said;
        for (const auto& [key, value] : swatch.measured) said.push_back(key + " " + inert(value));
        out += labelled(swatch.kind == catalog::SwatchText::Kind::knitted ? "knitted swatch:"
                                                                          : "woven swatch:",
                        joined(said) + (swatch.date.empty() ? "" : ", " + inert(swatch.date)), 2) +
               "\n";
    }
    if (const auto project = book.project(name))
        out +=
            labelled("begun:", inert(project->template_name) + " " + inert(project->started), 2) +
            "\n";
    return {out, ""};
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
            throw std::invalid_argument(fmt::format(
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
            together({batch_options(), {answer_options().front()}}),
            run};
}

}  // namespace gristwright::cli
