#include <fmt/core.h>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/describe.hpp"

namespace gristwright::cli {
namespace {

constexpr double left = 42, right = chart_width - 14, top = 14, bottom = 150;

double shown(Length size, const Units& units) {
    return units.imperial() ? in_inches(size) : in_centimetres(size);
}

Length size_shown(double value, const Units& units) {
    return units.imperial() ? inches(value) : centimetres(value);
}

Axis size_axis(const Plan& plan, const Units& units) {
    const auto& t = *plan.article;
    const auto from = std::min(t.smallest, plan.size) * 0.8;
    const auto to = std::max({t.largest, t.smallest * 1.3, plan.size}) * 1.05;
    return {shown(from, units), shown(to, units), left, right};
}

void curve(Svg& svg, const Axis& x, const Axis& y, const Plan& plan, const Units& units) {
    Path line, under;
    under.move({left, bottom});
    for (int i = 0; i <= 60; ++i) {
        const double value = x.from + (x.to - x.from) * i / 60;
        const Point p{x.at(value), y.at(plan.certainty_at(size_shown(value, units)))};
        i == 0 ? line.move(p) : line.line(p);
        under.line(p);
    }
    under.line({right, bottom}).close();
    svg.path(under, "under").path(line, "grist-line");
}

void frame(Svg& svg, const Axis& x, const Axis& y, const Plan& plan, const Units& units) {
    for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        svg.line({left, y.at(share)}, {right, y.at(share)}, "grid");
        svg.text({left - 6, y.at(share) + 4}, fmt::format("{:.0f} %", 100 * share), "faint end");
    }
    for (const double value : ticks(x, 5)) {
        svg.line({x.at(value), bottom}, {x.at(value), bottom + 4}, "axis");
        svg.text({x.at(value), bottom + 16}, fmt::format("{:g}", value), "faint middle");
    }
    svg.line({left, bottom}, {right, bottom}, "axis");
    svg.text({right, bottom + 31},
             fmt::format("{}, {}", plan.article->measure, units.imperial() ? "in" : "cm"),
             "faint end");
}

}  // namespace

Svg certainty_chart(const Plan& plan, const Units& units) {
    const auto& t = *plan.article;
    const auto x = size_axis(plan, units);
    const Axis y{0, 1, bottom, top};
    Svg svg(chart_width, bottom + 38, "Chance that the yarn reaches, against " + t.measure,
            fmt::format("{} at {} {}, {} at {}, {} at {}.", percent(plan.certainty_at(t.smallest)),
                        t.measure, units.size(t.smallest), percent(plan.certainty),
                        units.size(plan.size), percent(plan.certainty_at(t.largest)),
                        units.size(t.largest)));
    frame(svg, x, y, plan, units);
    curve(svg, x, y, plan, units);
    svg.line({left, y.at(plan.asked)}, {right, y.at(plan.asked)}, "asked");
    svg.text({left + 4, y.at(plan.asked) + 13}, percent(plan.asked) + " asked", "asked-text");
    const Point here{x.at(shown(plan.size, units)), y.at(plan.certainty_at(plan.size))};
    svg.line(here, {here.x, bottom}, "measure").circle(here, 5, "mark");
    const bool late = here.x > chart_width * 0.62;
    svg.text({here.x + (late ? -8 : 8), bottom - 8}, units.size(plan.size),
             late ? "label strong end" : "label strong");
    return svg;
}

Svg factor_chart(const Judgement& judged) {
    std::vector<FactorName> asked;
    std::string said;
    for (std::size_t f = 0; f < factor_count; ++f)
        if (judged.factors[f].weight > 0) asked.push_back(static_cast<FactorName>(f));
    for (const auto name : asked)
        said += fmt::format("{}{} {:.0f} of 100", said.empty() ? "" : ", ", words(name),
                            100 * judged.factor(name).desirability);
    const double row = 17;
    Svg svg(chart_width, row * double(asked.size()), "How far each wish is met", said);
    for (std::size_t i = 0; i < asked.size(); ++i) {
        const double y = row * double(i), share = judged.factor(asked[i]).desirability;
        svg.text({0, y + 12}, words(asked[i]), "label");
        svg.rect({100, y + 3}, 220, 10, "band", 2).rect({100, y + 3}, 220 * share, 10, "grist", 2);
        svg.text({chart_width, y + 12}, fmt::format("{:.0f}", 100 * share), "faint end");
    }
    return svg;
}

Svg share_bar(double share, std::string_view title) {
    Svg svg(100, 10, title, "");
    svg.rect({0, 1}, 100, 8, "band", 2).rect({0, 1}, 100 * share, 8, "grist", 2);
    for (int i = 1; i < 10; ++i) svg.line({10.0 * i, 1}, {10.0 * i, 9}, "weft");
    return svg;
}

}  // namespace gristwright::cli
