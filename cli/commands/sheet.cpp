#include "cli/commands/sheet.hpp"

#include "cli/for_whom.hpp"
#include "cli/output/page_file.hpp"
#include "cli/output/sheet.hpp"
#include "cli/plan_asked.hpp"
#include "cli/roles.hpp"

namespace gristwright::cli {
namespace {

Answer run_sheet(const Arguments& arguments) {
    check_page_file(arguments, "sheet");
    auto q = ask(arguments, arguments.words.size() > 1 ? arguments.words[1] : "");
    const auto judged = plan_asked(arguments, arguments.words[0], q).judged;
    return page_file(arguments, sheet(judged, q), q);
}

}  // namespace

Command sheet_command() {
    return {
        "sheet",
        "A project on one side of paper, A4 or Letter, to hang over the loom or keep by the chair: "
        "drawing, the five figures, steps to tick, what to wind off, what the scale says as the "
        "work goes, a square for every ten rows.",
        "TEMPLATE [BATCH.toml | SKEINS.csv]",
        1,
        2,
        together(
            {page_file_options("scarf.html"),
             {{"size", "130cm", "this size, not the largest that the metres cover"}, for_option},
             role_options(),
             plan_options(),
             batch_options(),
             {units_option}}),
        run_sheet,
        "woven-scarf heron.toml -o scarf.html"};
}

}  // namespace gristwright::cli
