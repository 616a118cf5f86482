#include "cli/commands/spin_more.hpp"

#include <fmt/core.h>

#include <nlohmann/json.hpp>

#include "cli/article_asked.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/json.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/yarn_words.hpp"
#include "cli/spinning.hpp"
#include "engine/evidence/spin.hpp"

namespace gristwright::cli {
namespace {

std::string more_text(const Plan& plan, const SpinMore& spin, const Question& q, double lost) {
    const auto head =
        fmt::format("{} of {} {}, {} chance", plan.article->title, plan.article->measure,
                    q.units.size(plan.size), percent(plan.asked));
    if (plan.short_by.si() <= 0)
        return wrapped(head + ": nothing more to spin, the yarn reaches.", 0) + "\n";
    return wrapped(
               fmt::format("{}: {} more, which is {} of fibre with {:.0f} % lost on the way.", head,
                           q.units.yarn(spin.metres), q.units.mass(spin.fibre), 100 * lost),
               0) +
           "\n" +
           wrapped(fmt::format("To be used beside the old skeins spin it to {}: "
                               "within {:.0f} % in grist; else "
                               "alternate skeins every two rows, or keep it for a border.",
                               q.units.grists(spin.thickest, spin.finest), 100 * spin.grist_margin),
                   0) +
           "\n" + stands_on(q.yarn);
}

Json more_json(const Plan& plan, const SpinMore& spin, const Question& q) {
    auto out = json_answer("spin-more");
    out["template"] = plan.article->name;
    out["size_cm"] = number(in_centimetres(plan.size));
    out["certainty_asked"] = number(plan.asked);
    out["metres_more"] = number(in_metres(spin.metres));
    out["grams_of_fibre"] = number(in_grams(spin.fibre));
    out["tex_from"] = number(in_tex(spin.finest));
    out["tex_to"] = number(in_tex(spin.thickest));
    out["stands_on"] = texts(standings(q.yarn.evidence));
    return out;
}

Answer more(const Arguments& arguments) {
    auto q = ask(arguments, arguments.words.size() > 1 ? arguments.words[1] : "");
    const auto article = find_template(*q.catalogue, arguments.words[0]);
    check_size(arguments, q, article);
    if (!q.request.size) q.request.size = article.ideal;
    const auto plan = judged_plan(article, q).plan;
    const auto spin = spin_more(plan, q.yarn.linear_density.mid, losses(arguments));
    const auto notes = joined(q.measured.notes, "\n");
    if (q.json) return {dumped(more_json(plan, spin, q)), notes};
    return {more_text(plan, spin, q, losses(arguments)), notes};
}

}  // namespace

Command spin_more_command() {
    return {"spin-more",
            "How much more to spin, so that the batch reaches for an article.",
            "TEMPLATE [BATCH]",
            1,
            2,
            together({{{"size", "150cm", "the size wished, else the ideal one"}, losses_option},
                      plan_options(),
                      batch_options(),
                      {units_option, json_option}}),
            more,
            "triangle-shawl heron --size 150cm --certainty 95"};
}

}  // namespace gristwright::cli
