// The weight classes on two rulers, thick above and fine below: by grist and by wraps. At a height
// stands the same yarn of ordinary loft on both, so a needle that stands higher on the right is a
// loftier yarn.
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

constexpr double ruler_top = 36, ruler_bottom = 346;
constexpr double grist_left = 38, grist_right = 134, wraps_left = 186, names_left = 210;

double yards_per_pound(LinearDensity d) { return count_of(d, count_system("yards per pound")); }

// The grist at which a yarn of ordinary loft has these wraps.
double grist_of_wraps(double wpi) {
    const double root = wpi / constants::wraps_per_root_grist;
    return root * root;
}

double grist_of(Wraps w) { return grist_of_wraps(in_wraps_per_inch(w)); }

// Always holds the yarn.
Axis thick_to_fine(const YarnProfile& yarn) {
    Axis out{
        .from = 100, .to = 7000, .start = ruler_top, .stop = ruler_bottom, .logarithmic = true};
    const auto hold = [&](double value) {
        out.from = std::min(out.from, value * 0.8);
        out.to = std::max(out.to, value * 1.25);
    };
    hold(yards_per_pound(yarn.linear_density.mid));
    if (yarn.wraps_measured) hold(grist_of(yarn.laid_wraps.mid));
    return out;
}

bool holds(const std::vector<WeightClass>& classes, const WeightClass& row) {
    return std::any_of(classes.begin(), classes.end(),
                       [&](const auto& c) { return c.number == row.number; });
}

// Where a class begins and ends on an axis; without a bound it reaches to the axis' end.
struct ClassSpan {
    double from, to;

    double middle() const { return (from + to) / 2; }
};

ClassSpan span_of(const Axis& y, std::optional<double> low, std::optional<double> high) {
    return {y.at(low.value_or(y.from)), y.at(high.value_or(y.to))};
}

const char* name_look(bool here) { return here ? "label strong middle" : "label middle"; }

void grist_class(Svg& svg, const Axis& y, const WeightClass& row, bool here) {
    if (!row.yd_per_lb_low && !row.yd_per_lb_high) return;
    const auto span = span_of(y, row.yd_per_lb_low, row.yd_per_lb_high);
    svg.rect({grist_left, span.from}, grist_right - grist_left, span.to - span.from - 1,
             here ? "class here" : "class");
    svg.text({(grist_left + grist_right) / 2, span.middle() + 4}, row.name, name_look(here));
}

// Classes overlap in wraps, so each is a bracket, left and right in turn.
void wraps_class(Svg& svg, const Axis& y, const WeightClass& row, bool here) {
    if (!row.wpi_low && !row.wpi_high) return;
    const auto as_grist = [](std::optional<double> w) {
        return w ? std::optional(grist_of_wraps(*w)) : std::nullopt;
    };
    const auto span = span_of(y, as_grist(row.wpi_low), as_grist(row.wpi_high));
    const double x = row.number % 2 == 0 ? wraps_left + 6 : wraps_left + 14;
    svg.path(Path()
                 .move({x + 4, span.from + 1})
                 .line({x, span.from + 1})
                 .line({x, span.to - 1})
                 .line({x + 4, span.to - 1}),
             here ? "bracket here" : "bracket");
    svg.text({names_left, span.middle() + 4}, row.name, here ? "label strong" : "label");
}

void grist_scale(Svg& svg, const Axis& y, const Units& units) {
    const char* unit = units.imperial() ? "yards per pound" : "metres per gram";
    for (const double metric : {0.25, 0.5, 1.0, 2.0, 4.0, 8.0}) {
        const double value = units.imperial() ? metric * 800 : metric;
        const double at = y.at(yards_per_pound(linear_density_of(value, count_system(unit))));
        svg.line({grist_left - 4, at}, {grist_left, at}, "axis");
        svg.text({grist_left - 6, at + 4}, fmt::format("{:g}", value), "faint end");
    }
    svg.text({grist_right, 14}, "by weight", "label strong end");
    svg.text({grist_right, 30}, units.imperial() ? "yd/lb" : "m/g", "faint end");
}

void wraps_scale(Svg& svg, const Axis& y) {
    for (const double wpi : {4, 6, 9, 12, 18, 26}) {
        const double at = y.at(grist_of_wraps(wpi));
        svg.line({wraps_left - 4, at}, {wraps_left, at}, "axis");
        svg.text({wraps_left - 6, at + 4}, fmt::format("{:g}", wpi), "faint end");
    }
    svg.line({wraps_left, y.start}, {wraps_left, y.stop}, "axis");
    svg.text({wraps_left, 14}, "by thickness", "label strong");
    svg.text({wraps_left, 30}, "wraps per inch", "faint");
}

void needle(Svg& svg, double left, double right, double low, double mid, double high) {
    svg.rect({left, low}, right - left, high - low, "grist-shade");
    svg.line({left, mid}, {right, mid}, "needle");
}

// What the two readings say together.
std::string loft_words(const YarnProfile& yarn) {
    const double grist = yards_per_pound(yarn.linear_density.mid);
    if (grist > grist_of(yarn.laid_wraps.high())) return "loftier than it weighs";
    if (grist < grist_of(yarn.laid_wraps.low())) return "denser than it looks";
    return "as thick as yarn of its weight usually is";
}

std::string reading_words(const YarnProfile& yarn, const Units& units) {
    const auto* unit = units.imperial() ? "yards per pound" : "metres per gram";
    const auto value = [&](LinearDensity d) { return count_of(d, count_system(unit)); };
    const auto& d = yarn.linear_density;
    const int decimals = units.imperial() ? 0 : 2;
    auto out = fmt::format("{:.{}f} {} ({:.{}f} to {:.{}f})", value(d.mid), decimals, unit,
                           value(d.high()), decimals, value(d.low()), decimals);
    if (yarn.wraps_measured)
        out += fmt::format(
            ", {:.0f} wraps per inch ({:.0f} to {:.0f})", in_wraps_per_inch(yarn.laid_wraps.mid),
            in_wraps_per_inch(yarn.laid_wraps.low()), in_wraps_per_inch(yarn.laid_wraps.high()));
    return out;
}

}  // namespace

Svg class_chart(const YarnProfile& yarn, const YarnTables& tables, const Units& units) {
    auto said = fmt::format("{}: {}", capital(reading_words(yarn, units)), class_line(yarn));
    if (yarn.wraps_measured) said += "; " + loft_words(yarn);
    Svg svg(chart_width, ruler_bottom + (yarn.wraps_measured ? 26 : 8),
            "Weight class, thick to fine", said + ".");
    const auto y = thick_to_fine(yarn);
    for (const auto& row : tables.classes)
        grist_class(svg, y, row, holds(yarn.class_by_grist, row));
    grist_scale(svg, y, units);
    const auto& d = yarn.linear_density;
    needle(svg, grist_left - 4, grist_right + 10, y.at(yards_per_pound(d.high())),
           y.at(yards_per_pound(d.mid)), y.at(yards_per_pound(d.low())));
    if (!yarn.wraps_measured) return svg;
    for (const auto& row : tables.classes)
        wraps_class(svg, y, row, holds(yarn.class_by_wraps, row));
    wraps_scale(svg, y);
    const auto& w = yarn.laid_wraps;
    needle(svg, wraps_left - 4, names_left - 3, y.at(grist_of(w.low())), y.at(grist_of(w.mid)),
           y.at(grist_of(w.high())));
    svg.text({chart_width / 2, ruler_bottom + 20}, loft_words(yarn), "label strong middle");
    return svg;
}

}  // namespace gristwright::cli
