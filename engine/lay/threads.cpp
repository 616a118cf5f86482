#include "engine/lay/threads.hpp"

#include <algorithm>
#include <cmath>

#include "engine/lay/constants.hpp"
#include "engine/lay/repeat.hpp"

namespace gristwright::lay {
namespace {

double at(const Threads::Aside& aside, int thread, int along) {
    if (aside.empty()) return 0;
    const auto& own = aside[within(thread, aside.size())];
    return own[within(along, own.size())];
}

// How often, near `along`, a crossing thread passes between `thread` and the next one: 0 to 1.
template <class Up>
double parted(Up up, int thread, int along) {
    double sum = 0, most = 0;
    for (int step = -4; step <= 4; ++step) {
        const double near = std::exp(-step * step / (2 * 1.5 * 1.5));
        most += near;
        if (up(thread, along + step) != up(thread + 1, along + step)) sum += near;
    }
    return sum / most;
}

// `up(thread, along)`: whether the thread is on top; `threads` by `length`: the repeat; `least`:
// what threads that touch are apart.
template <class Up>
Threads::Aside aside_of(Up up, int threads, int length, double least) {
    const auto n = static_cast<std::size_t>(threads), m = static_cast<std::size_t>(length);
    Threads::Aside out(n, std::vector<double>(m, 0));
    for (int j = 0; j < length; ++j) {
        std::vector<double> gaps;
        double all = 0;
        for (int i = 0; i < threads; ++i) {
            const double apart = std::pow(parted(up, i, j), 2);
            gaps.push_back(least + (1 - least) * apart);
            all += gaps.back();
        }
        double left = 0, mean = 0;
        for (std::size_t i = 0; i < n; ++i) {
            out[i][static_cast<std::size_t>(j)] = left - double(i);
            mean += (left - double(i)) / threads;
            left += gaps[i] * threads / all;
        }
        for (std::size_t i = 0; i < n; ++i) out[i][static_cast<std::size_t>(j)] -= mean;
    }
    return out;
}

}  // namespace

Threads::Threads(const Chart& chart, double end, double pick, double thickness, WeaveBuild built,
                 bool layered)
    : end_(end),
      pick_(pick),
      thickness_(thickness),
      crossed_ends_(built == WeaveBuild::crossed_ends) {
    if (layered || crossed_ends_) return;
    const auto up = [&](int i, int j) { return chart.at(i, j) == 'x'; };
    const auto least = [&](double spacing) {
        return std::clamp(constants::threads_together * thickness / spacing, 0.2, 1.0);
    };
    ends_ = aside_of(up, chart.across(), chart.up(), least(end));
    picks_ =
        aside_of([&](int j, int i) { return up(i, j); }, chart.up(), chart.across(), least(pick));
}

// Close beside the middle of its pair, in every second pick on the other side of it.
double Threads::crossed_end(int i, int j) const {
    const int pair = static_cast<int>(std::floor(i / 2.0));
    const bool left = (i - 2 * pair == 0) == (within(j, 2) == 0);
    return (2 * pair + 1) * end_ + (left ? -0.5 : 0.5) * constants::crossed_pair * thickness_;
}

double Threads::end(int i, int j) const {
    if (crossed_ends_) return crossed_end(i, j);
    return (i + 0.5 + at(ends_, i, j)) * end_;
}

double Threads::pick(int i, int j) const { return (j + 0.5 + at(picks_, j, i)) * pick_; }

}  // namespace gristwright::lay
