#include "cli/commands/card.hpp"

#include "cli/output/card.hpp"
#include "cli/output/page_file.hpp"
#include "cli/question.hpp"

namespace gristwright::cli {
namespace {

Answer run_card(const Arguments& arguments) {
    check_page_file(arguments, "card");
    const auto q = ask(arguments, arguments.words.empty() ? "" : arguments.words[0], Skeins::all);
    return page_file(arguments, card(q, arguments.text("spun")), q);
}

}  // namespace

Command card_command() {
    return {"card",
            "A printable card for each skein, to cut out and tie on: metres, mass, grist, wraps, "
            "fibre, how it was made, and how to wash it.",
            "[BATCH.toml | SKEINS.csv]",
            0,
            1,
            together({page_file_options("heron-cards.html"),
                      {{"spun", "\"autumn 2026\"", "when it was spun, in your own words"}},
                      batch_options(),
                      {units_option}}),
            run_card,
            "heron.toml -o heron-cards.html"};
}

}  // namespace gristwright::cli
