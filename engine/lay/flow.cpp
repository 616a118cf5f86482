#include "engine/lay/flow.hpp"

#include <algorithm>
#include <array>
#include <numeric>
#include <string>

#include "engine/lay/constants.hpp"
#include "engine/lay/repeat.hpp"
#include "engine/lay/stitch.hpp"

namespace gristwright::lay {
namespace {

// Loops of the row below that a stitch works.
int worked(char stitch) {
    if (stitch == 'o') return 0;
    if (stitch == 'c') return 3;
    return decreases(stitch) ? 2 : 1;
}

// Where each loop below goes; nowhere, if the row does not work as many as there are.
std::vector<int> carried_by(const std::string& row) {
    std::vector<int> out;
    for (std::size_t place = 0; place < row.size(); ++place)
        for (int n = 0; n < worked(row[place]); ++n)
            out.push_back(static_cast<int>(place) - static_cast<int>(out.size()));
    if (out.size() != row.size()) return std::vector<int>(row.size(), 0);
    return out;
}

// The middle one of a wale's and its neighbours': one stitch carried alone bends its own loop only.
int near(const std::vector<int>& carried, std::size_t wale) {
    std::array<int, 5> around{};
    for (int step = -2; step <= 2; ++step)
        around[static_cast<std::size_t>(step + 2)] =
            carried[within(static_cast<int>(wale) + step, carried.size())];
    std::nth_element(around.begin(), around.begin() + 2, around.end());
    return around[2];
}

std::vector<std::vector<double>> lean_of(const std::vector<std::vector<int>>& carried) {
    const auto up = carried.size(), across = carried.front().size();
    std::vector<std::vector<double>> out(up, std::vector<double>(across, 0));
    for (std::size_t i = 0; i < across; ++i) {
        double all = 0, mean = 0, done = 0;
        for (const auto& row : carried) all += near(row, i);
        for (std::size_t j = 0; j < up; ++j) {
            done += near(carried[j], i);
            out[j][i] = all * double(j) / double(up) - done;
            mean += out[j][i] / double(up);
        }
        for (auto& row : out) row[i] -= mean;
    }
    return out;
}

// Courses stand across the wales, as far as they follow; a repeat begins where it ends.
std::vector<double> rises(const std::vector<std::vector<int>>& carried) {
    const auto n = carried.front().size();
    std::vector<double> out(n, 0);
    double height = 0;
    for (std::size_t i = 0; i < n; ++i) {
        out[i] = height;
        for (const auto& row : carried)
            height -= constants::courses_follow * row[i] / double(carried.size());
    }
    for (std::size_t i = 0; i < n; ++i) out[i] -= height * double(i) / double(n);
    const double mean = std::accumulate(out.begin(), out.end(), 0.0) / double(n);
    for (auto& one : out) one -= mean;
    return out;
}

}  // namespace

Flow::Flow(const Chart& chart) : chart_(chart) {
    for (const auto& row : chart.rows) carried_.push_back(carried_by(row));
    leans_ = lean_of(carried_);
    rise_ = rises(carried_);
}

int Flow::carried(int wale, int row) const {
    const auto& by = carried_[within(row + 1, carried_.size())];
    return by[within(wale, by.size())];
}

bool Flow::together(int wale, int row) const {
    return decreases(chart_.at(wale + carried(wale, row), row + 1));
}

double Flow::leans(int wale, int row) const {
    const auto& places = leans_[within(row, leans_.size())];
    return places[within(wale, places.size())];
}

double Flow::rise(int wale, double wide) const { return rise_[within(wale, rise_.size())] * wide; }

}  // namespace gristwright::lay
