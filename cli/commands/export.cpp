#include "cli/commands/export.hpp"

#include <fmt/core.h>

#include "catalog/notebook/rescue.hpp"
#include "cli/out_file.hpp"
#include "cli/output/layout.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

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

}  // namespace

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

}  // namespace gristwright::cli
