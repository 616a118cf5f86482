#include "engine/lay/draft.hpp"

#include <algorithm>
#include <set>
#include <stdexcept>

#include "engine/units/failure.hpp"

namespace gristwright::lay {
namespace {

int longest_float(const std::string& thread) {
    int longest = 0, run = 0;
    for (std::size_t i = 0; i < 2 * thread.size(); ++i) {
        run = i > 0 && thread[i % thread.size()] == thread[(i - 1) % thread.size()] ? run + 1 : 1;
        longest = std::max(longest, run);
    }
    if (longest >= static_cast<int>(thread.size()) &&
        thread.find_first_not_of(thread.front()) == std::string::npos)
        throw Refused("a thread that never crosses is not woven in: '" + thread + "'");
    return longest;
}

std::string end_of(const Chart& chart, int place) {
    std::string out;
    for (int j = 0; j < chart.up(); ++j) out += chart.at(place, j);
    return out;
}

}  // namespace

double intersections(const Chart& chart) {
    int changes = 0;
    for (int j = 0; j < chart.up(); ++j)
        for (int i = 0; i < chart.across(); ++i)
            if (chart.at(i, j) != chart.at(i + 1, j)) ++changes;
    return static_cast<double>(changes) / chart.up();
}

Draft draft_of(const Chart& chart) {
    Draft out{chart.across(), intersections(chart), 0, 0, 0};
    for (const auto& pick : chart.rows)
        out.weft_float = std::max(out.weft_float, longest_float(pick));
    std::set<std::string> ways;
    for (int i = 0; i < chart.across(); ++i) {
        const auto end = end_of(chart, i);
        out.warp_float = std::max(out.warp_float, longest_float(end));
        ways.insert(end);
    }
    out.shafts = static_cast<int>(ways.size());
    return out;
}

}  // namespace gristwright::lay
