#include <fmt/core.h>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "engine/yarn/constants.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

constexpr double plot_left = 82, plot_right = chart_width - 14;
constexpr std::size_t most_skeins = 24;

double yards_per_pound(LinearDensity d) { return count_of(d, count_system("yards per pound")); }

// The grist at which a yarn of ordinary loft has these wraps.
double grist_of_wraps(double wpi) {
    const double root = wpi / constants::wraps_per_root_grist;
    return root * root;
}

std::string_view grist_unit(const Units& units) {
    return count_system(units.imperial() ? "yards per pound" : "metres per gram").name;
}

double grist_value(LinearDensity d, const Units& units) {
    return count_of(d, count_system(grist_unit(units)));
}

std::string grist_words(const Estimate<LinearDensity>& d, const Units& units) {
    const int decimals = units.imperial() ? 0 : 2;
    return fmt::format("{:.{}f} {} ({:.{}f} to {:.{}f})", grist_value(d.mid, units), decimals,
                       grist_unit(units), grist_value(d.high(), units), decimals,
                       grist_value(d.low(), units), decimals);
}

std::string wraps_words(const Estimate<Wraps>& w) {
    return fmt::format("{:.0f} wraps per inch ({:.0f} to {:.0f})", in_wraps_per_inch(w.mid),
                       in_wraps_per_inch(w.low()), in_wraps_per_inch(w.high()));
}

// The axis runs from thick to fine and always holds the yarn.
Axis grist_axis(const YarnProfile& yarn) {
    Axis out{.from = 100, .to = 7000, .start = plot_left, .stop = plot_right, .logarithmic = true};
    const auto hold = [&](double value) {
        out.from = std::min(out.from, value * 0.8);
        out.to = std::max(out.to, value * 1.25);
    };
    hold(yards_per_pound(yarn.linear_density.mid));
    if (yarn.wraps_measured) hold(grist_of_wraps(in_wraps_per_inch(yarn.laid_wraps.mid)));
    return out;
}

bool holds(const std::vector<WeightClass>& classes, const WeightClass& row) {
    return std::any_of(classes.begin(), classes.end(),
                       [&](const auto& c) { return c.number == row.number; });
}

// A class without an upper or a lower bound reaches to the end of the axis.
void class_bar(Svg& svg, const Axis& x, double y, std::optional<double> low,
               std::optional<double> high, std::string_view look) {
    if (!low && !high) return;
    const double a = x.at(low.value_or(x.from)), b = x.at(high.value_or(x.to));
    if (b > a) svg.rect({a, y}, b - a, 7, look, 2);
}

std::optional<double> as_grist(std::optional<double> wpi) {
    return wpi ? std::optional(grist_of_wraps(*wpi)) : std::nullopt;
}

void class_row(Svg& svg, const Axis& x, double y, const WeightClass& row, const YarnProfile& yarn) {
    const bool here = holds(yarn.class_by_grist, row) || holds(yarn.class_by_wraps, row);
    svg.text({plot_left - 6, y + 13}, row.name, here ? "label strong end" : "label end");
    class_bar(svg, x, y + 2, row.yd_per_lb_low, row.yd_per_lb_high, "grist-band");
    class_bar(svg, x, y + 11, as_grist(row.wpi_low), as_grist(row.wpi_high), "wraps-band");
}

void class_ticks(Svg& svg, const Axis& x, double top, double bottom, const Units& units) {
    for (const double metric : {0.25, 0.5, 1.0, 2.0, 4.0, 8.0}) {
        const double value = units.imperial() ? metric * 800 : metric;
        const double at =
            x.at(yards_per_pound(linear_density_of(value, count_system(grist_unit(units)))));
        svg.line({at, top}, {at, bottom}, "grid");
        svg.text({at, bottom + 13}, fmt::format("{:g}", value), "faint middle");
    }
    for (const double wpi : {4, 6, 9, 12, 18, 26})
        svg.text({x.at(grist_of_wraps(wpi)), top - 5}, fmt::format("{:g}", wpi), "faint middle");
    svg.text({plot_left - 6, top - 5}, "wraps/in", "faint end");
    svg.text({plot_left - 14, bottom + 13}, units.imperial() ? "yd/lb" : "m/g", "faint end");
}

void key_line(Svg& svg, double y, std::string_view look, const std::string& words) {
    svg.line({plot_left - 70, y - 4}, {plot_left - 44, y - 4}, look);
    svg.text({plot_left - 38, y}, words, "label");
}

void readings(Svg& svg, const Axis& x, double top, double bottom, const YarnProfile& yarn) {
    const auto draw = [&](double low, double mid, double high, const std::string& look) {
        svg.rect({x.at(low), top}, x.at(high) - x.at(low), bottom - top, look + "-shade");
        svg.line({x.at(mid), top}, {x.at(mid), bottom}, look + "-line");
    };
    const auto& d = yarn.linear_density;
    draw(yards_per_pound(d.high()), yards_per_pound(d.mid), yards_per_pound(d.low()), "grist");
    if (!yarn.wraps_measured) return;
    const auto at = [](Wraps w) { return grist_of_wraps(in_wraps_per_inch(w)); };
    draw(at(yarn.laid_wraps.low()), at(yarn.laid_wraps.mid), at(yarn.laid_wraps.high()), "wraps");
}

Axis skein_axis(const YarnProfile& yarn, const Units& units) {
    Axis out{.from = 1e9, .to = 0, .start = plot_left, .stop = plot_right};
    const auto hold = [&](double value) {
        out.from = std::min(out.from, value);
        out.to = std::max(out.to, value);
    };
    const double mid = grist_value(yarn.linear_density.mid, units);
    hold(mid * 0.93), hold(mid * 1.07);
    for (const auto& skein : yarn.skeins) {
        hold(grist_value(skein.linear_density.high(), units));
        hold(grist_value(skein.linear_density.low(), units));
    }
    const double room = (out.to - out.from) * 0.04;
    return {out.from - room, out.to + room, plot_left, plot_right};
}

void skein_row(Svg& svg, const Axis& x, double y, const SkeinGrist& skein, const Units& units) {
    const double low = x.at(grist_value(skein.linear_density.high(), units));
    const double high = x.at(grist_value(skein.linear_density.low(), units));
    svg.text({plot_left - 6, y + 4}, shortened(inert(skein.name), 11), "label end");
    svg.line({low, y}, {high, y}, "grist-line");
    svg.line({low, y - 4}, {low, y + 4}, "grist-line");
    svg.line({high, y - 4}, {high, y + 4}, "grist-line");
    svg.circle({x.at(grist_value(skein.linear_density.mid, units)), y}, 4.5, "dot");
}

}  // namespace

Svg class_chart(const YarnProfile& yarn, const YarnTables& tables, const Units& units) {
    const double top = 22, row = 22, bottom = top + row * double(tables.classes.size());
    auto said = "Grist " + grist_words(yarn.linear_density, units);
    if (yarn.wraps_measured) said += ", " + wraps_words(yarn.laid_wraps);
    Svg svg(chart_width, bottom + (yarn.wraps_measured ? 58 : 40),
            "Weight class by grist and wraps", said + ": " + class_line(yarn) + ".");
    const auto x = grist_axis(yarn);
    class_ticks(svg, x, top, bottom, units);
    for (std::size_t i = 0; i < tables.classes.size(); ++i)
        class_row(svg, x, top + row * double(i), tables.classes[i], yarn);
    readings(svg, x, top, bottom, yarn);
    key_line(svg, bottom + 34, "grist-line", grist_words(yarn.linear_density, units));
    if (yarn.wraps_measured) key_line(svg, bottom + 52, "wraps-line", wraps_words(yarn.laid_wraps));
    return svg;
}

Svg skein_chart(const YarnProfile& yarn, const Units& units) {
    const auto drawn = std::min(yarn.skeins.size(), most_skeins);
    const double top = 8, row = 24, bottom = top + row * double(drawn);
    Svg svg(chart_width, bottom + 36, "Grist of each skein",
            capital(agreement_line(yarn.agreement)) + ".");
    const auto x = skein_axis(yarn, units);
    const double mid = grist_value(yarn.linear_density.mid, units);
    svg.rect({x.at(mid * 0.95), top}, x.at(mid * 1.05) - x.at(mid * 0.95), bottom - top, "band");
    for (const double value : ticks(x, 4)) {
        svg.line({x.at(value), top}, {x.at(value), bottom}, "grid");
        svg.text({x.at(value), bottom + 13}, fmt::format("{:g}", value), "faint middle");
    }
    for (std::size_t i = 0; i < drawn; ++i)
        skein_row(svg, x, top + row * (double(i) + 0.5), yarn.skeins[i], units);
    auto foot = fmt::format("{}; lines hold 9 times in 10; band 10 %", grist_unit(units));
    if (drawn < yarn.skeins.size())
        foot = fmt::format("and {} more skeins; ", yarn.skeins.size() - drawn) + foot;
    svg.text({plot_right, bottom + 30}, foot, "faint end");
    return svg;
}

}  // namespace gristwright::cli
