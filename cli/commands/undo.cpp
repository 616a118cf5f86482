#include "cli/commands/undo.hpp"

#include <fmt/core.h>

#include "cli/output/layout.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

Answer undo(const Arguments& arguments) {
    const auto taken_back = notebook(arguments, Notebook::Mode::change).undo();
    if (!taken_back) return {"There is nothing to take back.\n", ""};
    return {fmt::format("Taken back: {}.\n", inert(*taken_back)), "", 0,
            fmt::format("it is taken back already: {}", *taken_back)};
}

}  // namespace

Command undo_command() {
    return {
        "undo", "Takes back the last change to the notebook.", "", 0, 0, {notebook_option}, undo,
        ""};
}

}  // namespace gristwright::cli
