#include "engine/lay/gathers.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/lay/constants.hpp"
#include "engine/lay/repeat.hpp"

namespace gristwright::lay {
namespace {

bool gathers(const std::string& row) { return row.find_first_of("mz") != std::string::npos; }

}  // namespace

Gathers::Gathers(const Chart& chart, double stitch, double row)
    : chart_(chart), stitch_(stitch), row_(row) {
    for (int r = 0; r < chart.up(); ++r) {
        if (!gathers(chart.rows[static_cast<std::size_t>(r)])) continue;
        GatheringRow found{r, {}};
        for (int place = 0; place < chart.across(); ++place) {
            const bool again = chart.at(place, r) == 'm' && place > 0 &&
                               chart.at(place - 1, r) == 'm' && found.groups.back().count < 3;
            if (again)
                ++found.groups.back().count;
            else
                found.groups.push_back({place, 1, 0});
        }
        // Each group stands over the one of the first such row that it grew from.
        for (std::size_t g = 0; g < found.groups.size(); ++g) {
            const auto& own = found.groups[g];
            found.groups[g].middle = rows_.empty() || g >= rows_.front().groups.size()
                                         ? own.first + own.count / 2.0
                                         : rows_.front().groups[g].middle;
        }
        rows_.push_back(std::move(found));
    }
}

// The last gathering row at or below a row, and the first one above it.
const Gathers::GatheringRow& Gathers::under(int row) const {
    const int r = within(row, chart_.up());
    const GatheringRow* out = &rows_.back();
    for (const auto& one : rows_)
        if (one.row <= r) out = &one;
    return *out;
}

int Gathers::next_above(int row) const {
    int next = row + 1;
    while (!gathers(chart_.rows[static_cast<std::size_t>(within(next, chart_.up()))])) ++next;
    return next;
}

Spot Gathers::moved(int wale, int row, double x, double y) const {
    const auto& from = under(row);
    const int below = row - within(row - from.row, chart_.up()), above = next_above(row);
    const int place = within(wale, chart_.across());
    const auto group = std::find_if(from.groups.begin(), from.groups.end(), [&](const Group& g) {
        return place >= g.first && place < g.first + g.count;
    });
    const double grown = std::clamp((y / row_ - below) / (above - below), 0.0, 1.0);
    const double bulge = std::sin(std::numbers::pi * grown);
    const double middle = (wale - place + group->middle) * stitch_;
    const double aside = place - group->first - (group->count - 1) / 2.0;
    const double own = x - (wale + 0.5) * stitch_;
    if (group->count == 1)
        return {middle + own * constants::closed_width, y, -constants::closed_recedes};
    const double wide = constants::closed_width + (1 - constants::closed_width) * bulge;
    const double dome = constants::made_rises * bulge * (1 - 0.4 * aside * aside);
    return {middle + (aside * stitch_ + own) * wide * constants::made_width, y, dome};
}

}  // namespace gristwright::lay
