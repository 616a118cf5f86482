#include "engine/lay/stitch.hpp"

#include <algorithm>

#include "engine/lay/constants.hpp"

namespace gristwright::lay {
namespace {

bool one_of(char stitch, std::string_view letters) {
    return letters.find(stitch) != std::string_view::npos;
}

double share(const std::string& row, char letter) {
    return static_cast<double>(std::count(row.begin(), row.end(), letter)) /
           static_cast<double>(row.size());
}

bool two_yarns(const std::string& row) {
    const double second = share(row, '2');
    return second > 0 && second < 1;
}

// The longest stretch, over the edge of the repeat, of stitches that are (not) of the second yarn.
int longest_run(const std::string& row, bool second) {
    int longest = 0, run = 0;
    for (std::size_t i = 0; i < 2 * row.size(); ++i) {
        run = (row[i % row.size()] == '2') == second ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    return longest;
}

}  // namespace

bool purled(char stitch) { return one_of(stitch, "pPd"); }
bool held(char stitch) { return one_of(stitch, "sfu"); }
bool crosses(char stitch) { return one_of(stitch, "<>()"); }
bool goes_right(char stitch) { return one_of(stitch, ">)"); }
bool in_front(char stitch) { return one_of(stitch, "<)"); }
bool decreases(char stitch) { return one_of(stitch, "tydc"); }

double loops(char stitch) {
    if (stitch == 's' || stitch == 'f') return constants::strand_past_one;
    if (stitch == 'u') return constants::tuck_loop;
    if (stitch == 'o') return constants::over_loop;
    if (stitch == 'x') return constants::dropped_bar;
    if (stitch == 'e') return constants::long_loop;
    if (stitch == 'B') return constants::bobble_loops;
    return crosses(stitch) ? double{constants::crossed_loop} : 1.0;
}

double mean_loops(const Chart& chart) {
    double sum = 0;
    for (const auto& row : chart.rows) {
        for (const char stitch : row) sum += loops(stitch);
        if (two_yarns(row)) sum += constants::strand_past_one * static_cast<double>(row.size());
    }
    return sum / (chart.across() * chart.up());
}

double second_share(const Chart& chart) {
    double sum = 0;
    for (const auto& row : chart.rows) sum += share(row, '2');
    return sum / chart.up();
}

int longest_strand(const Chart& chart) {
    int longest = 0;
    for (const auto& row : chart.rows)
        if (two_yarns(row))
            longest = std::max({longest, longest_run(row, true), longest_run(row, false)});
    return longest;
}

double metres_by_chart(const Chart& chart, double stitches, double rows) {
    return mean_loops(chart) * stitches * rows;
}

}  // namespace gristwright::lay
