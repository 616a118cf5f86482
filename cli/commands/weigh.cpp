#include "cli/commands/weigh.hpp"

#include <fmt/core.h>

#include "catalog/swatch_text.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "engine/evidence/progress.hpp"
#include "engine/units/reading.hpp"

namespace gristwright::cli {
namespace {

using catalog::Notebook;

// The plan that was begun, at the size that was fixed then.
Plan begun(Question& q, const catalog::ProjectText& project) {
    q.request.size = read_length(project.size).value;
    if (!project.certainty.empty()) q.request.certainty = read_share(project.certainty);
    return judged_plan(find_template(q.catalogue, project.template_name), q).plan;
}

std::string woven(const Plan& plan, const Question& q, Mass ball) {
    const auto& piece = plan.pieces.front();
    const auto per_length = piece.weft / (piece.panel.woven_length * piece.piece->count);
    const auto left = ball / q.yarn.linear_density.mid;
    return wrapped(fmt::format("{} of weft are left: about {} more on the loom, of {} in all.",
                               q.units.yarn(left),
                               q.units.size(Length::from_si(left.si() / per_length)),
                               q.units.size(piece.panel.woven_length * piece.piece->count)),
                   0) +
           "\n";
}

std::string knitted(const Plan& plan, const Question& q, const Progress& p) {
    const auto& piece = plan.pieces.front();
    auto out = wrapped(fmt::format("{} used, {} left; the work takes {:.0f} % of what was planned "
                                   "(± {:.0f} %).",
                                   q.units.yarn(p.used), q.units.yarn(p.left), 100 * p.factor.mid,
                                   164.5 * p.factor.spread * p.factor.mid),
                       0) +
               "\n";
    out +=
        wrapped(fmt::format("The {} has {} rows: the yarn reaches all of it and what follows with "
                            "a chance of {}.",
                            piece.piece->name, piece.rows, percent(p.chance)),
                0) +
        "\n";
    if (p.begin_rest_row > 0)
        out +=
            wrapped(fmt::format("Keep {} for what comes after it; begin that after row {:.0f} at "
                                "the latest.",
                                q.units.mass(p.keep_for_rest), std::floor(p.begin_rest_row)),
                    0) +
            "\n";
    else
        out += wrapped(
                   fmt::format("The last row it reaches is {:.0f} most likely, {:.0f} for sure "
                               "({}); bind off takes about three rows' yarn of it.",
                               std::floor(p.last_row), std::floor(p.sure_row), percent(plan.asked)),
                   0) +
               "\n";
    return out;
}

Answer run(const Arguments& arguments) {
    const auto& name = arguments.words[0];
    if (!arguments.has("ball"))
        throw Misused("weigh needs --ball 31.5g: all yarn still to be used");
    auto book = notebook(arguments, Notebook::Mode::change);
    auto q = ask(arguments, name);
    const auto project = book.project(name);
    if (!project)
        throw std::invalid_argument(fmt::format(
            "nothing is begun with {}: gristwright start TEMPLATE {}", inert(name), inert(name)));
    const auto plan = begun(q, *project);
    catalog::WeighingText typed{arguments.text("row"), arguments.text("woven"),
                                arguments.text("ball"), arguments.text("on")};
    if (plan.article->craft == Craft::woven) {
        const auto ball = read_mass(typed.ball).value;
        if (typed.length.empty()) throw Misused("weigh a woven piece with --woven 41cm");
        book.add_weighing(name, typed);
        return {woven(plan, q, ball), ""};
    }
    if (typed.row.empty()) throw Misused("weigh needs --row 96: the rows worked so far");
    std::vector<Weighing> weighings;
    for (const auto& text : book.weighings(name)) weighings.push_back(catalog::read_weighing(text));
    weighings.push_back(catalog::read_weighing(typed));
    const auto p = progress(plan, q.yarn.linear_density.mid, q.yarn.mass, weighings);
    book.add_weighing(name, typed);
    return {knitted(plan, q, p), ""};
}

}  // namespace

Command weigh_command() {
    return {"weigh",
            "The ball on the scale as the work goes: how far the yarn reaches, when to begin the "
            "border.",
            "NAME",
            1,
            1,
            {{"row", "96", "knitted: rows of the first piece worked so far"},
             {"woven", "41cm", "woven: length on the loom so far"},
             {"ball", "31.5g", "all yarn still to be used"},
             {"on", "2026-11-25", "the date, as you write it"},
             {"units", "metric", "metric, imperial or both"},
             {"notebook", "FILE", "another notebook than the usual one"}},
            run};
}

}  // namespace gristwright::cli
