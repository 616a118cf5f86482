#include "cli/output/edge_counts.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "cli/output/shaping_words.hpp"

namespace gristwright::cli {
namespace {

std::string stitches(double count) { return fmt::format("{:.0f} st", count); }

// A change of so many stitches over so many rows, two at a time, or more where rows are few.
std::string evenly(double change, int rows, const char* which) {
    const double steps = change / 2;
    if (steps < 1 || rows < 1) return "";
    const double every = rows / steps;
    if (every >= 1.5)
        return fmt::format("2 st {} about every {} row", which, nth(int(std::lround(every))));
    return fmt::format("about {:.0f} st {} every 2nd row", 2 * change / rows, which);
}

// As the steps have it; where they count nothing, evenly.
std::string slope_of(const PlanPiece& p, double change, const char* which) {
    const auto shaping = shaping_of(p);
    if (!shaping.reached.empty()) return fmt::format("{}, {}", which, shaping_words(shaping));
    if (shaping.runs.empty()) return evenly(change, p.rows, which);
    return fmt::format("{} st {} {}", shaping.by, which, shaping_words(shaping));
}

}  // namespace

EdgeCounts edge_counts(const PlanPiece& p, bool backwards) {
    if (p.woven) return {fmt::format("{} ends", p.panel.ends), "", ""};
    const double wide = p.stitches;
    const auto& o = p.outline;
    switch (o.shape) {
        case Shape::taper: {
            const double narrow =
                p.few_stitches > 0 ? p.few_stitches : std::round(wide * (o.narrow / o.width));
            return {stitches(wide), stitches(narrow),
                    slope_of(p, wide - narrow, backwards ? "more" : "fewer")};
        }
        case Shape::triangle:
            return {"from the neck", stitches(wide) + " at the end", "4 st more every 2nd row"};
        case Shape::bias_triangle:
            return {"from a point", stitches(wide) + " at the end",
                    fmt::format("1 st more every {} row",
                                nth(std::max(1, int(std::lround(p.rows / std::max(1.0, wide))))))};
        case Shape::half_circle:
        case Shape::circle:
            return {"from the middle", stitches(wide) + " at the rim", slope_of(p, wide, "more")};
        case Shape::crescent:
            return {stitches(wide) + " at the top", "",
                    "short rows: more left behind at each turn"};
        case Shape::square_from_corner:
            return {"from a corner", stitches(wide) + " across", "1 st more a row, then 1 fewer"};
        case Shape::cap:
            return {stitches(wide), "drawn up", "narrowed evenly to a few stitches"};
        default:
            return {stitches(wide), stitches(wide), ""};
    }
}

}  // namespace gristwright::cli
