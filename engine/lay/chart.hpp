// A fabric's repeat as a chart, seen from the right side, the top row first, rows parted by '/'.
//
// Knitted: k knit, p purl, o yarn over and t two together beside it, s slipped with the yarn
// behind, 2 knit with the second yarn, < and > stitches that cross: to the left in front, to the
// right behind. Woven: x where the end lies on top, - where the pick does.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gristwright::lay {

inline constexpr std::string_view stitch_letters = "kpots2<>";
inline constexpr std::string_view weave_letters = "x-";

struct Chart {
    std::vector<std::string> rows;  // bottom first, all as long

    int across() const { return static_cast<int>(rows.front().size()); }
    int up() const { return static_cast<int>(rows.size()); }
    char at(int place, int row) const;  // repeats for ever, both ways
};

// Throws Refused for no row, rows of different lengths, or a letter not in `letters`.
Chart read_chart(std::string_view text, std::string_view letters);

}  // namespace gristwright::lay
