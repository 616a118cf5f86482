#include "cli/commands/picture.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "catalog/text/nearest.hpp"
#include "cli/out_file.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/cloth_picture.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/line_up.hpp"
#include "cli/output/schematic.hpp"
#include "cli/output/split_picture.hpp"
#include "cli/plan_asked.hpp"
#include "cli/ranking.hpp"
#include "cli/roles.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::cli {
namespace {

Svg yarn_picture(const Question& q) {
    const auto classes = class_chart(q.yarn, q.catalogue->yarn, q.units);
    const auto skeins = skein_chart(q.yarn, q.units);
    const double first = 62, second = first + classes.height() + 34;
    const auto& name = q.measured.batch.name;
    const auto title = name.empty() ? "Your batch" : shortened(inert(name), 40);
    Svg out(chart_width, second + skeins.height() + 6, title, batch_line(q));
    out.text({12, 26}, title, "head");
    out.text({12, first - 14}, "Weight class, thick to fine", "label strong");
    out.place(classes, {0, first});
    out.text({12, second - 12}, "Skeins", "label strong");
    return out.place(skeins, {0, second});
}

Svg drawn_split(const Arguments& arguments, const Question& q) {
    const auto asked = asked_of(arguments, q);
    const auto split = split_for(asked, q);
    if (!split.found())
        throw Refused(
            "the skeins do not hold all of it together; gristwright split says what would help");
    return split_picture(split, asked, q);
}

// Their own words are of a batch alone; a plan and a cloth are of a TEMPLATE first.
bool of_batch(const std::string& what) {
    return what == "yarn" || what == "split" || what == "lineup";
}

std::string drawn(const std::string& what, const Arguments& arguments, Question& q) {
    if (what == "lineup") return line_up_poster(rank(q), q).poster();
    if (what == "yarn") return yarn_picture(q).file();
    if (what == "split") return drawn_split(arguments, q).file();
    const auto judged = plan_asked(arguments, arguments.words[1], q).judged;
    return what == "plan" ? plan_picture(judged, q).one_side()
                          : cloth_picture(judged.plan, q).file();
}

void check(const std::string& what, const Arguments& arguments) {
    const std::vector<std::string> known{"plan", "lineup", "split", "cloth", "yarn"};
    if (std::find(known.begin(), known.end(), what) == known.end())
        throw Misused(
            fmt::format("picture draws a plan, a lineup, a split, a cloth or a yarn, not '{}'{}",
                        what, catalog::did_you_mean(what, known)));
    if (!of_batch(what) && arguments.words.size() < 2)
        throw Misused(fmt::format("picture {} needs a TEMPLATE; see gristwright templates", what));
    if (of_batch(what) && arguments.words.size() > 2)
        throw Misused(fmt::format("picture {} takes one BATCH", what));
    if (arguments.text("out").empty())
        throw Misused("picture needs --out FILE.svg: where to write it");
}

Answer run_picture(const Arguments& arguments) {
    const auto& what = arguments.words[0];
    check(what, arguments);
    const std::size_t batch = of_batch(what) ? 1 : 2;
    auto q = ask(arguments, arguments.words.size() > batch ? arguments.words[batch] : "");
    const auto file = out_file(arguments);
    return written(file, drawn(what, arguments, q), "Written: " + inert(file.path),
                   q.measured.notes);
}

}  // namespace

Command picture_command() {
    return {
        "picture",
        "An SVG file: an article drawn to scale (plan), all that the batch makes beside a standing "
        "figure, for A3 (lineup), skeins and cuts (split), the cloth it is made of beside a smooth "
        "combed yarn's (cloth), or the yarn among the weight classes (yarn).",
        "plan|lineup|split|cloth|yarn [TEMPLATE] [BATCH.toml | SKEINS.csv]",
        1,
        3,
        together({out_options("shawl.svg"),
                  {{"size", "130cm", "this size, not the largest that the metres cover"}},
                  split_options(),
                  role_options(),
                  plan_options(),
                  batch_options(),
                  {units_option}}),
        run_picture,
        "plan triangle-shawl heron.toml -o shawl.svg"};
}

}  // namespace gristwright::cli
