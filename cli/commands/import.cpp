#include "cli/commands/import.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/reference/source.hpp"
#include "catalog/text/named_reading.hpp"
#include "catalog/typed/swatch_text.hpp"
#include "cli/question.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

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

Command import_command() {
    return {"import", "Takes in what export wrote as JSON.",
            "FILE",   1,
            1,        {{"unchecked", "", "take in what cannot be read, too"}, notebook_option},
            take_in,  "notebook.json"};
}

}  // namespace gristwright::cli
