#include "engine/lay/wefts.hpp"

#include <algorithm>

namespace gristwright::lay {

Areas::Areas(const Chart& chart, bool clasped, int first, int last)
    : chart_(chart), clasped_(clasped), first_(first), last_(last) {}

char Areas::at(int end, int row) const {
    if (!clasped_) return chart_.at(end, row);
    const int left = (first_ + last_ - chart_.across()) / 2;
    return chart_.at(std::clamp(end - left, 0, chart_.across() - 1), row);
}

std::vector<Stretch> Areas::of_pick(int row) const {
    std::vector<Stretch> out;
    for (int from = first_; from <= last_;) {
        int to = from;
        while (to < last_ && at(to + 1, row) == at(from, row)) ++to;
        const char area = at(from, row);
        out.push_back({area == '2' ? 1 : 0, from, to, area == '3', clasped_ && from > first_,
                       clasped_ && to < last_});
        if (area == '3') out.push_back({1, from, to, true, false, false});
        from = to + 1;
    }
    return out;
}

}  // namespace gristwright::lay
