// A fabric's repeat as a chart, seen from the right side, the top row first, rows parted by '/'.
//
// Knitted: engine/lay/stitch.hpp names the letters. Woven: x where the end lies on top, - where
// the pick does.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::lay {

inline constexpr std::string_view stitch_letters = "kpots2<>KPydcmzfu()Bxe";
inline constexpr std::string_view weave_letters = "x-";
// Of a chart that says which of two yarns lies where; 3: both.
inline constexpr std::string_view stitch_areas = "12", weft_areas = "123";

struct Chart {
    std::vector<std::string> rows;  // bottom first, all as long

    int across() const { return static_cast<int>(rows.front().size()); }
    int up() const { return static_cast<int>(rows.size()); }
    char at(int place, int row) const;  // repeats for ever, both ways
};

// Throws Refused for no row, rows of different lengths, or a letter not in `letters`.
Chart read_chart(std::string_view text, std::string_view letters);

}  // namespace gristwright::lay
