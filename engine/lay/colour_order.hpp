// Where which of two yarns lies in a cloth of two colours: 1 and 2, repeated for ever.
// In an order. Knitted: one figure to a row, from the first: "1122". Woven: to an end, and behind a
// stroke to a pick: "11112222/11112222". Or in areas: a chart of them (engine/lay/chart.hpp).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/lay/chart.hpp"

namespace gristwright::lay {

struct ColourOrder {
    std::string along;   // of rows, or of ends; empty: one yarn
    std::string across;  // of picks; empty: knitted, or one yarn
    std::optional<Chart> areas{};

    // 0 or 1: which yarn it is. Of one yarn: 0.
    int row(int row) const;
    int end(int end) const { return row(end); }
    int pick(int pick) const;
    bool two() const { return !along.empty(); }
};

// Throws Refused for other figures, or another number of parts.
ColourOrder read_rows_of_colour(std::string_view text);
ColourOrder read_threads_of_colour(std::string_view text);

}  // namespace gristwright::lay
