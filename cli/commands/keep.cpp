#include "cli/commands/keep.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/named_reading.hpp"
#include "catalog/notebook_rescue.hpp"
#include "catalog/source.hpp"
#include "catalog/swatch_text.hpp"
#include "cli/out_file.hpp"
#include "cli/output/layout.hpp"
#include "cli/question.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

Answer undo(const Arguments& arguments) {
    const auto taken_back = notebook(arguments, Notebook::Mode::change).undo();
    if (!taken_back) return {"There is nothing to take back.\n", ""};
    return {fmt::format("Taken back: {}.\n", inert(*taken_back)), "", 0,
            fmt::format("it is taken back already: {}", *taken_back)};
}

Answer backup(const Arguments& arguments) {
    notebook(arguments, Notebook::Mode::read_only).backup(arguments.words[0]);
    return {fmt::format("The notebook is copied to '{}'.\n", inert(arguments.words[0])), "", 0,
            "the copy is made"};
}

std::string counted(std::size_t count, const char* one, const char* many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

// What can still be read of a damaged notebook, into a new file.
Answer rescued(const Arguments& arguments) {
    if (!arguments.has("out"))
        throw Misused("export --rescue needs --out FILE.json: a new file for what can be read");
    const auto out = catalog::rescue(notebook_place(arguments));
    const auto said = fmt::format(
        "{}, {}, {}, {}, {} are written to '{}'; gristwright import takes them into a new notebook",
        counted(out.batches, "batch", "batches"), counted(out.skeins, "skein", "skeins"),
        counted(out.swatches, "swatch", "swatches"),
        counted(out.weighings, "weighing", "weighings"),
        counted(out.suggestions, "suggestion", "suggestions"), inert(arguments.text("out")));
    std::vector<std::string> notes;
    if (!out.damaged.empty())
        notes.push_back("damaged, so that some of it may be missing: " + joined(out.damaged));
    if (!out.renamed.empty()) notes.push_back("batches whose name is lost: " + joined(out.renamed));
    return written(out_file(arguments), out.json, wrapped(said + ".", 0), notes);
}

Answer give_out(const Arguments& arguments) {
    if (arguments.has("rescue")) return rescued(arguments);
    const auto book = notebook(arguments, Notebook::Mode::read_only);
    const auto text = arguments.has("csv") ? book.export_csv() : book.export_json();
    if (!arguments.has("out")) return {text, ""};
    return written(out_file(arguments), text,
                   fmt::format("Written to '{}'.", inert(arguments.text("out"))), {});
}

// Every text that is kept with the batch can be read.
void check_kept(const Notebook& book, const std::string& name,
                const catalog::Catalogue& catalogue) {
    try {
        const auto measured = catalog::interpret(book.load_batch(name), catalogue);
        informed_yarn(measured, {}, book.swatches(name), catalogue, true);
        for (const auto& weighing : book.weighings(name)) catalog::read_weighing(weighing);
        if (const auto project = book.project(name); project && !project->size.empty())
            catalog::read_named("size", project->size,
                                [](const std::string& text) { return read_length(text); });
    } catch (const Refused& error) {
        throw Refused(fmt::format(
            "batch '{}' cannot be used: {}; nothing is taken in (--unchecked takes it all "
            "as it is)",
            name, error.what()));
    }
}

Answer take_in(const Arguments& arguments) {
    const auto text = catalog::read_file(arguments.words[0]);
    auto book = notebook(arguments, Notebook::Mode::change);
    book.at_once([&] {
        const auto before = book.batch_names();
        book.import_json(text);
        if (arguments.has("unchecked")) return;
        const auto catalogue = catalog::built_in();
        for (const auto& name : book.batch_names())
            if (!std::binary_search(before.begin(), before.end(), name))
                check_kept(book, name, catalogue);
    });
    return {"Taken into the notebook; gristwright undo takes it back.\n", "", 0, kept_already};
}

}  // namespace

Command undo_command() {
    return {
        "undo", "Takes back the last change to the notebook.", "", 0, 0, {notebook_option}, undo,
        ""};
}
Command backup_command() {
    return {"backup", "Copies the whole notebook to a new file.",
            "FILE",   1,
            1,        {notebook_option},
            backup,   "notebook-copy.sqlite"};
}
Command export_command() {
    return {"export",
            "Writes out everything in the notebook.",
            "",
            0,
            0,
            together({{{"csv", "", "the skeins as a spreadsheet, not everything as JSON"},
                       {"rescue", "", "what can be read of a damaged notebook, to a new file"}},
                      out_options("FILE", "to this file"),
                      {notebook_option}}),
            give_out,
            "--out notebook.json"};
}
Command import_command() {
    return {"import", "Takes in what export wrote as JSON.",
            "FILE",   1,
            1,        {{"unchecked", "", "take in what cannot be read, too"}, notebook_option},
            take_in,  "notebook.json"};
}

}  // namespace gristwright::cli
