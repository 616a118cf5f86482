#include "engine/lay/wales.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/lay/constants.hpp"
#include "engine/lay/eased.hpp"
#include "engine/lay/stitch.hpp"

namespace gristwright::lay {
namespace {

int floor_div(int a, int n) { return a >= 0 ? a / n : -((-a + n - 1) / n); }

}  // namespace

Wales::Wales(const Chart& chart, double stitch, double row)
    : chart_(chart), flow_(chart), row_(row), crossing_rows_(0) {
    double shares = 0;
    for (int i = 0; i < chart.across(); ++i)
        shares += recedes(i) ? double{constants::purl_width} : 1.0;
    knit_width_ = stitch * chart.across() / shares;
    left_.push_back(0);
    for (int i = 0; i < chart.across(); ++i) left_.push_back(left_.back() + width(i));
    int apart = 1;
    for (int j = 0; j < chart.up(); ++j)
        if (crossing_in(j))
            for (apart = 1; !crossing_in(j + apart);) ++apart;
    crossing_rows_ = std::min<double>(constants::crossing_rows, apart);
}

double Wales::width(int wale) const {
    return recedes(wale) ? knit_width_ * constants::purl_width : knit_width_;
}

double Wales::middle(int wale) const {
    const int repeat = floor_div(wale, chart_.across());
    const auto i = static_cast<std::size_t>(wale - repeat * chart_.across());
    return repeat * left_.back() + (left_[i] + left_[i + 1]) / 2;
}

bool Wales::recedes(int wale) const {
    bool purl = true, knit_beside = false;
    for (int j = 0; j < chart_.up(); ++j) {
        purl = purl && purled(chart_.at(wale, j));
        for (int i = 0; i < chart_.across(); ++i)
            knit_beside = knit_beside || !purled(chart_.at(i, j));
    }
    return purl && knit_beside;
}

bool Wales::crossing_in(int row) const {
    for (int i = 0; i < chart_.across(); ++i)
        if (crosses(chart_.at(i, row))) return true;
    return false;
}

std::optional<int> Wales::crossing_near(int row) const {
    for (const int near : {row, row - 1, row + 1, row - 2, row + 2, row - 3})
        if (crossing_in(near)) return near;
    return {};
}

// How many stitches from `place` on, step by step, cross that way; a row of nothing else: its
// repeat.
int Wales::alike(int place, int step, int crossing, bool rightwards) const {
    int n = 0;
    while (n < chart_.across()) {
        const char stitch = chart_.at(place + step * n, crossing);
        if (!crosses(stitch) || goes_right(stitch) != rightwards) break;
        ++n;
    }
    return n;
}

// Stitches that go right pass all those beside them that go left, and the other way round.
int Wales::crosses_to(int wale, int crossing) const {
    const char mine = chart_.at(wale, crossing);
    if (!crosses(mine)) return wale;
    const bool right = goes_right(mine);
    const int step = right ? 1 : -1;
    const int others = wale + step * alike(wale, step, crossing, right);
    return wale + step * alike(others, step, crossing, !right);
}

bool Wales::crosses_in_front(int wale, int row) const {
    const auto crossing = crossing_near(row);
    if (!crossing || std::abs(2 * (row - *crossing) - 1) > 3) return false;
    const char stitch = chart_.at(wale, *crossing);
    return crosses(stitch) && in_front(stitch) == (row <= *crossing);
}

double Wales::forward(int wale, int row, double y) const {
    const auto crossing = crossing_near(row);
    if (!crossing || !crosses(chart_.at(wale, *crossing))) return 0;
    const double away = (y / row_ - (*crossing + 1)) / 2;
    if (std::abs(away) >= 1) return 0;
    const double near = std::pow(std::cos(std::numbers::pi / 2 * away), 2);
    return crosses_in_front(wale, row) ? near : -near / 2;
}

double Wales::crossing_middle(int wale, int crossing) const {
    const bool right = goes_right(chart_.at(wale, crossing));
    const int step = right ? 1 : -1;
    const int mine = alike(wale, step, crossing, right);
    const int behind = alike(wale, -step, crossing, right);
    const int others = alike(wale + step * mine, step, crossing, !right);
    return (middle(wale - step * (behind - 1)) + middle(wale + step * (mine + others - 1))) / 2;
}

// Half way through, the stitches that cross lie over each other and spread to fill their room.
double Wales::crossed(int wale, int row, double x, double y) const {
    const auto crossing = crossing_near(row);
    if (!crossing || !crosses(chart_.at(wale, *crossing))) return x;
    const double top = row_ * (*crossing + 1), span = row_ * crossing_rows_;
    const double done = eased((y - top) / span + 0.5);
    int other = wale;  // where this stitch goes, or came from
    for (int i = wale - chart_.across(); i <= wale + chart_.across(); ++i)
        if (i != wale && crosses_to(i, *crossing) == wale) other = i;
    if (row <= *crossing) other = crosses_to(wale, *crossing);
    x += (middle(other) - middle(wale)) * (row <= *crossing ? done : 1 - done);
    const double centre = crossing_middle(wale, *crossing);
    const double spreads = constants::crossing_spreads * crossing_rows_ / constants::crossing_rows;
    return centre + (x - centre) * (1 + 4 * spreads * done * (1 - done));
}

double Wales::lean(int wale, int row, double t) const {
    const int carried = flow_.carried(wale, row);
    const double foot = knit_width_ * flow_.leans(wale, row),
                 head = knit_width_ * flow_.leans(wale + carried, row + 1);
    double whole = middle(wale + carried) - middle(wale);
    if (carried != 0 && flow_.together(wale, row))
        whole *= 1 - (1 - constants::leaning) / std::abs(carried);
    return foot + (head + whole - foot) * eased(t);
}

// How far lace lifts its courses there.
double Wales::risen(double x) const {
    const double place = x / knit_width_ - 0.5;
    const int wale = static_cast<int>(std::floor(place));
    const double wide = knit_width_ / row_;
    return knit_width_ * (flow_.rise(wale, wide) +
                          (flow_.rise(wale + 1, wide) - flow_.rise(wale, wide)) * (place - wale));
}

Place Wales::opened(Place p) const {
    const double w = knit_width_, radius = 1.25 * w;
    const int row = static_cast<int>(std::lround(p.y / row_));
    const int wale = static_cast<int>(std::floor(p.x / w));
    for (int j = row - 2; j <= row + 2; ++j)
        for (int i = wale - 2; i <= wale + 2; ++i) {
            if (chart_.at(i, j) != 'o') continue;
            const Place hole{middle(i), row_ * (j - 0.2)};
            const double away = std::hypot(p.x - hole.x, p.y - hole.y);
            if (away >= radius || away <= 0) continue;
            const double push = constants::eyelet_opens * w * (1 - eased(away / radius));
            p = {p.x + push * (p.x - hole.x) / away, p.y + push * (p.y - hole.y) / away};
        }
    return p;
}

Place Wales::moved(int wale, int row, Place p) const {
    p.x = crossed(wale, row, p.x, p.y);
    p = opened(p);
    p.y += risen(p.x);
    return p;
}

}  // namespace gristwright::lay
