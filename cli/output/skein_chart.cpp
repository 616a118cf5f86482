// The skeins of a batch by their grist, thick to fine.
#include <fmt/core.h>

#include <algorithm>
#include <numeric>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/describe.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/short_names.hpp"
#include "engine/yarn/count.hpp"

namespace gristwright::cli {
namespace {

constexpr double rows_right = chart_width - 10, row_height = 26, rows_top = 8;
constexpr std::size_t longest_name_by_row = 16;

std::string_view grist_unit(const Units& units) {
    return count_system(units.imperial() ? "yards per pound" : "metres per gram").name;
}

double grist_value(LinearDensity d, const Units& units) {
    return count_of(d, count_system(grist_unit(units)));
}

Axis skein_axis(const YarnProfile& yarn, const Units& units, double left) {
    Axis out{.from = 1e9, .to = 0, .start = left, .stop = rows_right};
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
    return {out.from - room, out.to + room, left, rows_right};
}

void skein_row(Svg& svg, const Axis& x, double y, const SkeinGrist& skein, const std::string& name,
               const Units& units) {
    const double low = x.at(grist_value(skein.linear_density.high(), units));
    const double high = x.at(grist_value(skein.linear_density.low(), units));
    svg.text({x.start - 6, y + 4}, name, "label end");
    svg.line({low, y}, {high, y}, "grist-line");
    svg.line({low, y - 4}, {low, y + 4}, "grist-line");
    svg.line({high, y - 4}, {high, y + 4}, "grist-line");
    svg.circle({x.at(grist_value(skein.linear_density.mid, units)), y}, 4.5, "dot");
}

// Places in the batch, thick to fine.
std::vector<std::size_t> by_grist(const YarnProfile& yarn) {
    std::vector<std::size_t> out(yarn.skeins.size());
    std::iota(out.begin(), out.end(), std::size_t{0});
    std::stable_sort(out.begin(), out.end(), [&](auto a, auto b) {
        return yarn.skeins[a].linear_density.mid > yarn.skeins[b].linear_density.mid;
    });
    if (out.size() > most_skeins_drawn) out.resize(most_skeins_drawn);
    return out;
}

std::string spoken(const YarnProfile& yarn, const std::vector<std::size_t>& order,
                   const Units& units) {
    auto out =
        capital(agreement_line(yarn.agreement)) + ". In " + std::string(grist_unit(units)) + ":";
    for (const auto s : order)
        out += fmt::format(" {} {:.{}f},", inert(yarn.skeins[s].name),
                           grist_value(yarn.skeins[s].linear_density.mid, units),
                           units.imperial() ? 0 : 2);
    out.back() = '.';
    return out;
}

void grist_scale(Svg& svg, const Axis& x, double bottom) {
    for (const double value : ticks(x, 4)) {
        svg.line({x.at(value), rows_top}, {x.at(value), bottom}, "grid");
        svg.text({x.at(value), bottom + 15}, fmt::format("{:g}", value), "faint middle");
    }
}

}  // namespace

Svg skein_chart(const YarnProfile& yarn, const Units& units) {
    const auto order = by_grist(yarn);
    std::vector<std::string> names;
    for (const auto& skein : yarn.skeins) names.push_back(skein.name);
    names = short_names(names, longest_name_by_row);
    std::size_t longest = 4;
    for (const auto s : order) longest = std::max(longest, characters(names[s]));
    const double left = 12 + 7.4 * double(longest),
                 bottom = rows_top + row_height * double(order.size());
    const bool more = order.size() < yarn.skeins.size();
    Svg svg(chart_width, bottom + (more ? 66 : 50), "Grist of each skein",
            spoken(yarn, order, units));
    const auto x = skein_axis(yarn, units, left);
    const double mid = grist_value(yarn.linear_density.mid, units);
    svg.rect({x.at(mid * 0.95), rows_top}, x.at(mid * 1.05) - x.at(mid * 0.95), bottom - rows_top,
             "band");
    grist_scale(svg, x, bottom);
    for (std::size_t i = 0; i < order.size(); ++i)
        skein_row(svg, x, rows_top + row_height * (double(i) + 0.5), yarn.skeins[order[i]],
                  names[order[i]], units);
    svg.text({rows_right, bottom + 31}, grist_unit(units), "faint end");
    svg.text({rows_right, bottom + 46}, "points within the band, 10 % wide, agree", "faint end");
    if (more)
        svg.text({rows_right, bottom + 62},
                 fmt::format("and {} more skeins", yarn.skeins.size() - order.size()), "faint end");
    return svg;
}

}  // namespace gristwright::cli
