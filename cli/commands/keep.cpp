#include "cli/commands/keep.hpp"

#include <fmt/core.h>

#include "catalog/source.hpp"
#include "cli/out_file.hpp"
#include "cli/output/layout.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

Answer undo(const Arguments& arguments) {
    const auto taken_back = notebook(arguments, Notebook::Mode::change).undo();
    if (!taken_back) return {"There is nothing to take back.\n", ""};
    return {fmt::format("Taken back: {}.\n", inert(*taken_back)), ""};
}

Answer backup(const Arguments& arguments) {
    notebook(arguments, Notebook::Mode::read_only).backup(arguments.words[0]);
    return {fmt::format("The notebook is copied to '{}'.\n", inert(arguments.words[0])), ""};
}

Answer give_out(const Arguments& arguments) {
    const auto book = notebook(arguments, Notebook::Mode::read_only);
    const auto text = arguments.has("csv") ? book.export_csv() : book.export_json();
    if (!arguments.has("out")) return {text, ""};
    return written(out_file(arguments), text,
                   fmt::format("Written to '{}'.", inert(arguments.text("out"))), {});
}

Answer take_in(const Arguments& arguments) {
    const auto text = catalog::read_file(arguments.words[0]);
    notebook(arguments, Notebook::Mode::change).import_json(text);
    return {"Taken into the notebook; gristwright undo takes it back.\n", ""};
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
            together({{{"csv", "", "the skeins as a spreadsheet, not everything as JSON"}},
                      out_options("FILE", "to this file"),
                      {notebook_option}}),
            give_out,
            "--out notebook.json"};
}
Command import_command() {
    return {"import", "Takes in what export wrote as JSON.",
            "FILE",   1,
            1,        {notebook_option},
            take_in,  "notebook.json"};
}

}  // namespace gristwright::cli
