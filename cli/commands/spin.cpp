#include "cli/commands/spin.hpp"

#include <fmt/core.h>

#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "engine/evidence/spin.hpp"
#include "engine/suggestion/constants.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

double losses(const Arguments& arguments) {
    return arguments.has("losses") ? read_share(arguments.text("losses"))
                                   : double{constants::spinning_losses};
}

Answer more(const Arguments& arguments) {
    auto q = ask(arguments, arguments.words.size() > 1 ? arguments.words[1] : "");
    const auto& article = find_template(q.catalogue, arguments.words[0]);
    if (!q.request.size) q.request.size = article.ideal;
    const auto plan = judged_plan(article, q).plan;
    const auto head = fmt::format("{} of {} {}, {} chance", article.title, article.measure,
                                  q.units.size(plan.size), percent(plan.asked));
    if (plan.short_by.si() <= 0)
        return {wrapped(head + ": nothing more to spin, the metres reach.", 0) + "\n", ""};
    const auto spin = spin_more(plan, q.yarn.linear_density.mid, losses(arguments));
    const auto grist = q.yarn.linear_density.mid;
    return {
        wrapped(fmt::format("{}: {} more, which is {} of fibre with {:.0f} % lost on the way.",
                            head, q.units.yarn(spin.metres), q.units.mass(spin.fibre),
                            100 * losses(arguments)),
                0) +
            "\n" +
            wrapped(fmt::format(
                        "To be used beside the old skeins spin it between {:.2f} and {:.2f} "
                        "m/g ({:.0f} to {:.0f} yd/lb): within {:.0f} % in grist; else "
                        "alternate skeins every two rows, or keep it for a border.",
                        count_of(grist * (1 + spin.grist_margin), count_system("metres per gram")),
                        count_of(grist * (1 - spin.grist_margin), count_system("metres per gram")),
                        count_of(grist * (1 + spin.grist_margin), count_system("yards per pound")),
                        count_of(grist * (1 - spin.grist_margin), count_system("yards per pound")),
                        100 * spin.grist_margin),
                    0) +
            "\n",
        ""};
}

Answer target(const Arguments& arguments) {
    auto catalogue = whole_catalogue();
    const auto& article = find_template(catalogue, arguments.words[0]);
    const auto size = arguments.has("size") ? read_length_option(arguments, "size") : article.ideal;
    const auto units = units_of(arguments, "both");
    auto out = fmt::format("{} of {} {}: yarns that would do\n", article.title, article.measure,
                           units.size(size));
    for (const auto& t :
         spin_for(article, size, catalogue.yarn.classes, catalogue.fabrics, losses(arguments))) {
        out += "\n" + heading(capital(t.weight)) + "\n";
        out +=
            wrapped(fmt::format(
                        "{:.2f} m/g ({:.0f} yd/lb), from {:.2f} to {:.2f} m/g still works; about "
                        "{:.0f} wpi, laid",
                        count_of(t.grist, count_system("metres per gram")),
                        count_of(t.grist, count_system("yards per pound")),
                        count_of(t.grist_high, count_system("metres per gram")),
                        count_of(t.grist_low, count_system("metres per gram")),
                        in_wraps_per_inch(t.wraps)),
                    2) +
            "\n";
        const double root = std::sqrt(count_of(t.grist, count_system("worsted count")));
        out += wrapped(fmt::format("{}-ply, {:.1f} to {:.1f} plied turns per inch (judgement)",
                                   t.plies, t.twist_low * root, t.twist_high * root),
                       2) +
               "\n";
        out += wrapped(fmt::format("{}; spin from {} of fibre", units.yarn_range(t.metres),
                                   units.mass(t.fibre)),
                       2) +
               "\n";
    }
    return {out, ""};
}

const Option losses_option{"losses", "10%", "fibre lost in carding, drafting, plying, sampling"};

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
                      {answer_options().front()}}),
            more};
}

Command spin_for_command() {
    return {"spin-for",
            "What yarn to aim for next time, for an article.",
            "TEMPLATE",
            1,
            1,
            {{"size", "150cm", "the size wished, else the ideal one"},
             losses_option,
             {"units", "both", "metric, imperial or both"}},
            target};
}

}  // namespace gristwright::cli
