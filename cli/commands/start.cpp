#include "cli/commands/start.hpp"

#include <fmt/core.h>

#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

Answer run(const Arguments& arguments) {
    const auto& name = arguments.words[1];
    auto q = ask(arguments, name);
    const auto judged = judged_plan(find_template(q.catalogue, arguments.words[0]), q);
    auto book = notebook(arguments, catalog::Notebook::Mode::change);
    // The size is fixed now: later evidence changes what it needs, not what is being made.
    book.start_project(
        name, {arguments.words[0], fmt::format("{:.0f}cm", in_centimetres(judged.plan.size)),
               arguments.text("certainty"), arguments.text("on")});
    return {fmt::format("Begun: {} with {}, {} {}.\nWeigh the ball as you go: gristwright weigh {} "
                        "--row 40 --ball 120g\n",
                        judged.plan.article->title, inert(name), judged.plan.article->measure,
                        q.units.size(judged.plan.size), inert(name)),
            ""};
}

}  // namespace

Command start_command() {
    return {
        "start",
        "Begins a project with a remembered batch: its size is fixed, and the ball can be weighed.",
        "TEMPLATE NAME",
        2,
        2,
        together({{{"size", "130cm", "this size, not the largest that the metres cover"},
                   {"on", "2026-11-25", "the date, as you write it"}},
                  plan_options(),
                  {{"notebook", "FILE", "another notebook than the usual one"}}}),
        run};
}

}  // namespace gristwright::cli
