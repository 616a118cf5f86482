#include "cli/output/cloth_picture.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "cli/output/yarn_in_cloth.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/woven.hpp"
#include "engine/project/by_cloth.hpp"

namespace gristwright::cli {
namespace {

constexpr double edge = 16, top = 108, panel_width = 296, panel_height = 262;
constexpr double stitches_shown = 9, threads_shown = 15;  // across a panel

struct Panel {
    lay::Cloth cloth;
    YarnLook look;
};

const char* not_a_photograph = "A drawing from measurements, not a photograph.";

// mm across a panel: a repeat where a few stitches are not enough.
double shown(double spacing, int repeat, double wanted) {
    return spacing * std::max(wanted, repeat + 1.0);
}

std::string knit_chart(const KnitFabric& fabric) {
    return fabric.chart.empty() ? "k" : fabric.chart;
}

lay::Cloth knitted_cloth(const KnitCloth& cloth, Length thickness) {
    const auto chart = lay::read_chart(knit_chart(*cloth.fabric), lay::stitch_letters);
    const auto spacing = lay::spacing(cloth, thickness);
    const double width = shown(spacing.stitch, chart.across(), stitches_shown);
    return lay::knitted(chart, spacing, width, width * panel_height / panel_width);
}

lay::Cloth woven_cloth(const WovenCloth& cloth, Length thickness) {
    const auto chart = lay::read_chart(cloth.weave->chart.empty() ? "x-/-x" : cloth.weave->chart,
                                       lay::weave_letters);
    const double end = 1000 * (1 - cloth.width.mid) / cloth.ends.si();
    const double pick = 1000 * (1 - cloth.length.mid) / cloth.picks.si();
    const double width = shown(end, chart.across(), threads_shown);
    return lay::woven(chart, end, pick, in_millimetres(thickness), width,
                      width * panel_height / panel_width);
}

Panel panel_of(const PlanPiece& piece, const YarnProfile& yarn, int plies) {
    const auto look = look_of(yarn, plies);
    return {by_cloth(
                piece, [&](const KnitCloth& k) { return knitted_cloth(k, look.thickness); },
                [&](const WovenCloth& w) { return woven_cloth(w, look.thickness); }),
            look};
}

std::string drawn_as(const std::string& name, const std::string& chart, const char* instead) {
    return chart.empty() ? fmt::format("{} (drawn as {}: no chart of it yet)", name, instead)
                         : name;
}

std::string knitted_words(const KnitCloth& k, const Units& units) {
    return fmt::format("{}, {} as finished, {:.1f} mm of yarn to a plain loop",
                       drawn_as(k.fabric->name, k.fabric->chart, "stocking stitch"),
                       units.gauge(k.stitches, k.rows), in_millimetres(k.loop));
}

std::string woven_words(const WovenCloth& w, const Units& units) {
    return fmt::format("{}, ends at {} and picks at {} as finished",
                       drawn_as(w.weave->name, w.weave->chart, "plain weave"),
                       units.sett(w.ends / (1 - w.width.mid)),
                       units.sett(w.picks / (1 - w.length.mid)));
}

std::string cloth_words(const PlanPiece& piece, const Units& units) {
    return by_cloth(
        piece, [&](const KnitCloth& k) { return knitted_words(k, units); },
        [&](const WovenCloth& w) { return woven_words(w, units); });
}

std::string cover_words(const Panel& panel, const YarnProfile& yarn) {
    return fmt::format(
        "Yarn {:.1f} mm thick here, {:.1f} laid, {:.1f} squeezed. It covers {:.1f} % of the cloth.",
        in_millimetres(panel.look.thickness), in_millimetres(yarn.laid_diameter),
        in_millimetres(yarn.packed_diameter), 100 * lay::cover(panel.cloth));
}

double asked_definition(const PlanPiece& piece) {
    return by_cloth(
        piece, [](const KnitCloth& k) { return k.fabric->definition; },
        [](const WovenCloth& w) { return w.weave->definition; });
}

// The piece whose stitches have most to read.
const PlanPiece& telling_piece(const Plan& plan) {
    return *std::max_element(
        plan.pieces.begin(), plan.pieces.end(),
        [](const auto& a, const auto& b) { return asked_definition(a) < asked_definition(b); });
}

void draw_panel(Svg& out, double x, const std::string& title, const Panel& panel,
                const YarnProfile& yarn) {
    out.text({x, top - 42}, title, "label strong");
    out.lines({x, top - 25}, cover_words(panel, yarn), 48, "faint");
    out.place(drawn_cloth(panel.cloth, panel.look, panel_width / panel.cloth.width), {x, top});
}

}  // namespace

Svg cloth_picture(const Plan& plan, const Question& q) {
    const auto& piece = telling_piece(plan);
    const int plies = std::max(2, q.measured.batch.plies);
    const auto yours = panel_of(piece, q.yarn, plies);
    const auto combed_yarn = combed_alike(q);
    const auto combed = panel_of(piece, combed_yarn, plies);
    const auto said = capital(cloth_words(piece, q.units));
    const double foot = top + panel_height, second = 2 * edge + panel_width;
    Svg out(second + panel_width + edge, foot + 54, plan.article->title + ": the cloth",
            fmt::format("{}. Yours: {} Smooth combed: {} {}", said, cover_words(yours, q.yarn),
                        cover_words(combed, combed_yarn), not_a_photograph));
    out.text({edge, 24}, plan.article->title, "head").text({edge, 42}, said, "label");
    draw_panel(out, edge, "From this yarn", yours, q.yarn);
    draw_panel(out, second, "From a smooth combed yarn of the same grist", combed, combed_yarn);
    const double bar = 10 * panel_width / yours.cloth.width;
    out.line({edge, foot + 18}, {edge + bar, foot + 18}, "edge");
    out.text({edge + bar + 8, foot + 22}, "10 mm", "label");
    out.text({edge, foot + 42}, not_a_photograph, "faint");
    return out;
}

}  // namespace gristwright::cli
