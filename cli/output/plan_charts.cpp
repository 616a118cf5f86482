#include <fmt/core.h>

#include <algorithm>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/describe.hpp"

namespace gristwright::cli {
namespace {

constexpr double least_told = 0.5;  // points
constexpr double curve_left = 48, curve_right = chart_width - 14, curve_top = 14,
                 curve_bottom = 150;

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
    return {shown(from, units), shown(to, units), curve_left, curve_right};
}

void curve(Svg& svg, const Axis& x, const Axis& y, const Plan& plan, const Units& units) {
    Path line, under;
    under.move({curve_left, curve_bottom});
    for (int i = 0; i <= 60; ++i) {
        const double value = x.from + (x.to - x.from) * i / 60;
        const Point p{x.at(value), y.at(plan.certainty_at(size_shown(value, units)))};
        i == 0 ? line.move(p) : line.line(p);
        under.line(p);
    }
    under.line({curve_right, curve_bottom}).close();
    svg.path(under, "under").path(line, "grist-line");
}

void frame(Svg& svg, const Axis& x, const Axis& y, const Plan& plan, const Units& units) {
    for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        svg.line({curve_left, y.at(share)}, {curve_right, y.at(share)}, "grid");
        svg.text({curve_left - 6, y.at(share) + 4}, fmt::format("{:.0f} %", 100 * share),
                 "faint end");
    }
    for (const double value : ticks(x, 5)) {
        svg.line({x.at(value), curve_bottom}, {x.at(value), curve_bottom + 4}, "axis");
        svg.text({x.at(value), curve_bottom + 20}, fmt::format("{:g}", value), "faint middle");
    }
    svg.line({curve_left, curve_bottom}, {curve_right, curve_bottom}, "axis");
    svg.text({curve_right, curve_bottom + 37},
             fmt::format("{}, {}; ▲ ideal", plan.article->measure, units.imperial() ? "in" : "cm"),
             "faint end");
}

// The size that the article is best at, as a mark on the axis.
void mark_ideal(Svg& svg, const Axis& x, const Template& t, const Units& units) {
    const double at = x.at(shown(t.ideal, units));
    svg.path(Path()
                 .move({at, curve_bottom + 1})
                 .line({at - 4, curve_bottom + 7})
                 .line({at + 4, curve_bottom + 7})
                 .close(),
             "notch");
}

// The size planned and its certainty, above the falling curve where there is room to its right,
// else below it.
void draw_told(Svg& svg, const Axis& x, const Axis& y, const Plan& plan, const Units& units) {
    const auto said = fmt::format("{}, {}", units.size(plan.size), percent(plan.certainty));
    const double room = 7.6 * double(said.size()) + 8, level = 0.5;
    double falls = x.from;  // the size at which the curve has come down to that level
    const double step = (x.to - x.from) / 60;
    while (falls < x.to && plan.certainty_at(size_shown(falls, units)) > level) falls += step;
    const double here = x.at(shown(plan.size, units));
    if (x.at(falls) + room < curve_right)
        svg.text({x.at(falls) + 8, y.at(level)}, said, "label strong");
    else if (here - curve_left > curve_right - here)
        svg.text({here - 8, curve_bottom - 8}, said, "label strong end");
    else
        svg.text({here + 8, curve_bottom - 8}, said, "label strong");
}

}  // namespace

Svg certainty_chart(const Plan& plan, const Units& units) {
    const auto& t = *plan.article;
    const auto x = size_axis(plan, units);
    const Axis y{0, 1, curve_bottom, curve_top};
    Svg svg(chart_width, curve_bottom + 44, "Chance that the yarn reaches, against " + t.measure,
            fmt::format("{} at {} {}, {} at {}, {} at {}.", percent(plan.certainty_at(t.smallest)),
                        t.measure, units.size(t.smallest), percent(plan.certainty),
                        units.size(plan.size), percent(plan.certainty_at(t.largest)),
                        units.size(t.largest)));
    frame(svg, x, y, plan, units);
    curve(svg, x, y, plan, units);
    svg.line({curve_left, y.at(plan.asked)}, {curve_right, y.at(plan.asked)}, "asked");
    svg.text({curve_right, y.at(plan.asked) - 5}, percent(plan.asked) + " asked", "asked-text end");
    mark_ideal(svg, x, t, units);
    const Point here{x.at(shown(plan.size, units)), y.at(plan.certainty_at(plan.size))};
    svg.line(here, {here.x, curve_bottom}, "measure").circle(here, 5, "mark");
    draw_told(svg, x, y, plan, units);
    return svg;
}

std::vector<PointsLost> points_lost(const Judgement& judged) {
    std::vector<PointsLost> out;
    for (const auto& need : judged.unmet)
        if (need.cost >= least_told) out.push_back({need.demand->reason, need.cost});
    for (std::size_t f = 0; f < factor_count; ++f)
        if (judged.factors[f].weight > 0 && judged.factors[f].cost >= least_told)
            out.push_back({std::string(words(static_cast<FactorName>(f))), judged.factors[f].cost});
    std::stable_sort(out.begin(), out.end(),
                     [](const auto& a, const auto& b) { return a.points > b.points; });
    return out;
}

std::vector<std::string> fully_met(const Judgement& judged) {
    std::vector<std::string> out;
    for (std::size_t f = 0; f < factor_count; ++f)
        if (judged.factors[f].weight > 0 && judged.factors[f].cost < least_told)
            out.emplace_back(words(static_cast<FactorName>(f)));
    return out;
}

Svg lost_chart(const Judgement& judged) {
    const auto lost = points_lost(judged);
    std::string said;
    for (const auto& one : lost)
        said += fmt::format("{}{} {:.1f} points", said.empty() ? "" : ", ", one.to, one.points);
    constexpr double row = 36, most_points = 20;
    Svg svg(chart_width, row * double(lost.size()) + 2, "Points lost", said);
    const Axis x{0, std::max(most_points, lost.empty() ? 0 : lost.front().points), 0,
                 chart_width - 44};
    for (std::size_t i = 0; i < lost.size(); ++i) {
        const double y = row * double(i);
        svg.text({0, y + 13}, shortened(lost[i].to, 44), "label");
        svg.rect({0, y + 18}, x.stop, 10, "band", 2);
        svg.rect({0, y + 18}, x.at(lost[i].points), 10, "lost", 2);
        svg.text({chart_width, y + 28}, fmt::format("{:.0f}", lost[i].points), "faint end");
    }
    return svg;
}

Svg batch_share_bar(const Plan& plan) {
    Svg svg(100, 10, "", "");
    const Axis x{0, 1, 0, 100};
    const auto at = [&](Length q) { return x.at(q / plan.have.mid); };
    svg.rect({0, 1}, 100, 8, "band", 2).rect({0, 1}, at(plan.need.mid), 8, "grist", 2);
    return svg.line({at(plan.need.low()), 5}, {at(plan.need.high()), 5}, "whisker");
}

Svg share_bar(double share) {
    Svg svg(100, 10, "", "");
    svg.rect({0, 1}, 100, 8, "band", 2).rect({0, 1}, 100 * share, 8, "grist", 2);
    for (int i = 1; i < 10; ++i) svg.line({10.0 * i, 1}, {10.0 * i, 9}, "weft");
    return svg;
}

}  // namespace gristwright::cli
