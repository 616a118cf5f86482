#include "cli/commands/start.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "cli/for_whom.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/mind.hpp"
#include "cli/plan_asked.hpp"
#include "cli/roles.hpp"
#include "engine/evidence/progress.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

std::string how_to_weigh(const Plan& plan, const Question& q, const std::string& name) {
    if (plan.article->craft == Craft::woven)
        return fmt::format(
            "With the warp on the loom weigh the weft yarn: gristwright weigh {} --woven {} "
            "--ball {}\n",
            name, q.units.typed_size(Length{}),
            q.units.typed_mass(weft_in_work(plan) * weft_grist(plan, q.yarn)));
    return fmt::format(
        "Weigh all the yarn for it now, then as you go: gristwright weigh {} --row 0 --ball {}\n",
        name, q.units.typed_mass(std::min(plan.mass, q.yarn.mass)));
}

// A project that is running is not ended by a slip.
void check_free(const catalog::Notebook& book, const std::string& name, bool instead) {
    const auto running = book.project(name);
    if (!running || instead) return;
    const auto count = book.weighings(name).size();
    throw Refused(fmt::format(
        "{} is being made into {} already, with {} weighing{}; --instead ends that and begins anew",
        name, running->template_name, count, count == 1 ? "" : "s"));
}

// What begins short is begun knowingly.
std::string warning(const Plan& plan, const Question& q) {
    if (plan.certainty >= plan.asked) return "";
    return labelled("Mind:",
                    fmt::format("the yarn does not reach for this with the certainty that was "
                                "asked: {} are needed, {} are to hand; the chance is {}, {} was "
                                "asked. gristwright plan shows which size it reaches for.",
                                q.units.yarn(plan.need.mid), q.units.yarn(plan.have.mid),
                                percent(plan.certainty), percent(plan.asked)),
                    0) +
           "\n";
}

JudgedPlan begun(const Arguments& arguments, catalog::Notebook& book, Question& q) {
    const auto& name = arguments.words[1];
    q = ask(arguments, name);
    auto judged = plan_asked(arguments, arguments.words[0], q).judged;
    check_free(book, name, arguments.has("instead"));
    // The size is fixed now: later evidence changes what it needs, not what is being made.
    book.start_project(
        name, {arguments.words[0], fmt::format("{:.0f}cm", in_centimetres(judged.plan.size)),
               arguments.text("certainty"), arguments.text("on"), arguments.text("as"),
               arguments.text("with"), arguments.text("yarn")});
    return judged;
}

Answer run_start(const Arguments& arguments) {
    const auto& name = arguments.words[1];
    auto book = notebook(arguments, catalog::Notebook::Mode::change);
    Question q;
    JudgedPlan judged;
    book.at_once([&] { judged = begun(arguments, book, q); });
    const auto notes = joined(q.measured.notes, "\n");
    if (q.json) {
        auto out = json_answer("start");
        out["batch"] = inert(name);
        out["plan"] = to_json(judged, q.yarn);
        out["plan"]["cautions"] = texts(cautions(judged.plan, q));
        return {dumped(out), notes, 0, kept_already};
    }
    return {
        wrapped(fmt::format("Begun: {} with {}, {} {}.", judged.plan.article->title, inert(name),
                            judged.plan.article->measure, q.units.size(judged.plan.size)),
                0) +
            "\n" + (q.which_yarn.empty() ? "" : wrapped(capital(q.which_yarn) + ".", 0) + "\n") +
            warning(judged.plan, q) + other_yarn_text(judged.plan, q) +
            how_to_weigh(judged.plan, q, inert(name)) +
            care_line(cautions_on(q, {judged.plan.article.get()})),
        notes, 0, kept_already};
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
                   for_option,
                   {"instead", "", "end the project that is running, with its weighings"},
                   date_option},
                  role_options(),
                  plan_options(),
                  {json_option, notebook_option}}),
        run_start,
        "triangle-shawl heron --size 120cm"};
}

}  // namespace gristwright::cli
