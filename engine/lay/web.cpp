#include "engine/lay/web.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "engine/lay/constants.hpp"
#include "engine/lay/repeat.hpp"

namespace gristwright::lay {
namespace {

// Ends of the upper cloth lie over every pick of the lower one, ends of the lower under every pick
// of the upper.
bool parts_in_two(const Chart& chart, int ends, int picks) {
    for (int i = 0; i < 2 * chart.across(); ++i)
        for (int j = 0; j < 2 * chart.up(); ++j) {
            const bool upper_end = i % 2 == ends, upper_pick = j % 2 == picks;
            if (upper_end != upper_pick && (chart.at(i, j) == 'x') != upper_end) return false;
        }
    return true;
}

// A float past two threads lies as in any twill; each doubling beyond draws as much again.
double draws(double passed) { return std::max(0.0, std::log2(passed) - 1); }

int parity(int n) { return within(n, 2); }

}  // namespace

Web::Web(const Chart& chart) : chart_(chart) {
    for (const int ends : {0, 1})
        for (const int picks : {0, 1})
            if (parts_in_two(chart, ends, picks)) upper_ = Upper{ends, picks};
    for (int i = 0; i < chart.across(); ++i) {
        auto& end = lifted_.emplace_back();
        for (int j = 0; j < chart.up(); ++j) {
            double sum = 0;  // neighbours rise together
            for (int di = -1; di <= 1; ++di)
                for (int dj = -1; dj <= 1; ++dj)
                    sum += tied(i + di, j + dj) * (2 - std::abs(di)) * (2 - std::abs(dj)) / 16;
            end.push_back(constants::float_lifts * sum);
        }
    }
}

double Web::end(int i, int j) const {
    if (!upper_) return (up(i, j) ? 1 : -1) * constants::crimp_rise + lifted(i, j);
    const bool upper = parity(i) == upper_->ends;
    const double layer = (upper ? 0.5 : -0.5) * constants::layers_part;
    if ((parity(j) == upper_->picks) != upper) return layer;
    return layer + (up(i, j) ? 1 : -1) * constants::crimp_rise;
}

double Web::pick(int i, int j) const {
    if (!upper_) return (up(i, j) ? -1 : 1) * constants::crimp_rise + lifted(i, j);
    const bool upper = parity(j) == upper_->picks;
    const double layer = (upper ? 0.5 : -0.5) * constants::layers_part;
    if ((parity(i) == upper_->ends) != upper) return layer;
    return layer + (up(i, j) ? -1 : 1) * constants::crimp_rise;
}

double Web::lifted(int i, int j) const {
    return lifted_[static_cast<std::size_t>(within(i, chart_.across()))]
                  [static_cast<std::size_t>(within(j, chart_.up()))];
}

// Threads that the one beside a crossing passes on its way from there, before it changes sides.
double Web::run(int i, int j, int di, int dj) const {
    const int most = di != 0 ? chart_.across() : chart_.up();
    int n = 1;
    while (n < most && up(i + (n + 1) * di, j + (n + 1) * dj) == up(i + di, j + dj)) ++n;
    return n;
}

// The floats that end at a crossing: those of the pick to both sides, those of the end up and down.
double Web::tied(int i, int j) const {
    const double of_pick = up(i, j) ? 1 : -1;  // the pick lies under, so its floats are on the face
    double out = 0;
    for (const int step : {-1, 1}) {
        if (up(i + step, j) != up(i, j)) out += of_pick * draws(run(i, j, step, 0));
        if (up(i, j + step) != up(i, j)) out -= of_pick * draws(run(i, j, 0, step));
    }
    return out;
}

}  // namespace gristwright::lay
