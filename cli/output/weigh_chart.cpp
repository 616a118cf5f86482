// The ball as the work goes: what it should weigh after so many rows, with its 90 % range, and what
// it weighed.
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"

namespace gristwright::cli {
namespace {

constexpr double grid_left = 44, grid_right = chart_width - 12, grid_top = 10, grid_bottom = 170;
constexpr int steps_along_band = 40;

// What is left after that row, where the work takes `factor` times the metres that were planned.
double grams_left(const Plan& plan, const YarnProfile& yarn, Mass start, double factor,
                  double row) {
    const auto used = planned_by_row(plan, row) * factor;
    return std::max(0.0, in_grams(start - used * yarn.linear_density.mid));
}

// Those that count its rows; the others stand in the list beside the chart.
std::vector<Weighing> of_the_piece(const Plan& plan, const std::vector<Weighing>& weighings) {
    std::vector<Weighing> out;
    for (const auto& w : weighings)
        if (&plan.pieces[place_of(plan, w).piece] == &worked_piece(plan)) out.push_back(w);
    return out;
}

}  // namespace

bool can_be_charted(const Plan& plan) {
    const auto& piece = worked_piece(plan);
    return piece.knit && piece.ours.si() > 0 && piece.piece->count == 1;
}

Svg weigh_chart(const Plan& plan, const YarnProfile& yarn, const std::vector<Weighing>& weighings) {
    const auto& piece = worked_piece(plan);
    const bool from_start = !weighings.empty() && before_the_work(plan, weighings.front());
    const auto start = from_start ? weighings.front().ball : yarn.mass;
    std::string said;
    for (const auto& w : of_the_piece(plan, weighings))
        said += fmt::format("After row {:.0f} {:.1f} g. ", w.row, in_grams(w.ball));
    Svg svg(chart_width, grid_bottom + 44, "What the ball weighs as the work goes",
            said + fmt::format("Planned: from {:.0f} g to {:.0f} g after row {}.",
                               grams_left(plan, yarn, start, 1, 0),
                               grams_left(plan, yarn, start, 1, piece.rows), piece.rows));
    const Axis x{0, double(piece.rows), grid_left, grid_right},
        y{0, in_grams(start), grid_bottom, grid_top};
    for (const double grams : ticks(y, 4)) {
        svg.line({grid_left, y.at(grams)}, {grid_right, y.at(grams)}, "grid");
        svg.text({grid_left - 6, y.at(grams) + 4}, fmt::format("{:g}", grams), "faint end");
    }
    for (const double row : ticks(x, 5))
        svg.text({x.at(row), grid_bottom + 18}, fmt::format("{:g}", row), "faint middle");
    const auto along = [&](double factor) {
        Line out;
        for (int i = 0; i <= steps_along_band; ++i) {
            const double row = double(i) / steps_along_band * piece.rows;
            out.push_back({x.at(row), y.at(grams_left(plan, yarn, start, factor, row))});
        }
        return out;
    };
    auto band = along(piece.metres.low() / piece.metres.mid);
    const auto high = along(piece.metres.high() / piece.metres.mid);
    band.insert(band.end(), high.rbegin(), high.rend());
    svg.path(path_of(band, true), "under").path(path_of(along(1), false), "grist-line");
    for (const auto& w : of_the_piece(plan, weighings))
        svg.circle({x.at(w.row), y.at(in_grams(w.ball))}, 5, "mark");
    svg.text({grid_left, grid_bottom + 38}, "grams", "faint");
    svg.text({grid_right, grid_bottom + 38}, "rows of the " + piece.piece->name, "faint end");
    return svg;
}

}  // namespace gristwright::cli
