#include "cli/commands/start.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

std::string how_to_weigh(const Plan& plan, const YarnProfile& yarn, const std::string& name) {
    if (plan.article->craft == Craft::woven)
        return fmt::format(
            "With the warp on the loom weigh the weft yarn: gristwright weigh {} --woven 0cm "
            "--ball "
            "{:.0f}g\n",
            name, in_grams(plan.pieces.front().weft * yarn.linear_density.mid));
    return fmt::format(
        "Weigh all the yarn for it now, then as you go: gristwright weigh {} --row 0 --ball "
        "{:.0f}g\n",
        name, in_grams(plan.mass));
}

Answer run(const Arguments& arguments) {
    const auto& name = arguments.words[1];
    auto q = ask(arguments, name);
    const auto judged = judged_plan(find_template(q.catalogue, arguments.words[0]), q);
    auto book = notebook(arguments, catalog::Notebook::Mode::change);
    // The size is fixed now: later evidence changes what it needs, not what is being made.
    book.start_project(
        name, {arguments.words[0], fmt::format("{:.0f}cm", in_centimetres(judged.plan.size)),
               arguments.text("certainty"), arguments.text("on")});
    if (q.json) {
        auto out = json_answer("start");
        out["batch"] = inert(name);
        out["plan"] = to_json(judged, q.yarn);
        return {dumped(out), ""};
    }
    return {
        wrapped(fmt::format("Begun: {} with {}, {} {}.", judged.plan.article->title, inert(name),
                            judged.plan.article->measure, q.units.size(judged.plan.size)),
                0) +
            "\n" + how_to_weigh(judged.plan, q.yarn, inert(name)),
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
        together(
            {{{"size", "130cm", "this size, not the largest that the metres cover"}, date_option},
             plan_options(),
             {json_option, notebook_option}}),
        run,
        "triangle-shawl heron --size 120cm"};
}

}  // namespace gristwright::cli
