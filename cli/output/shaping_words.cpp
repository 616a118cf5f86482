#include "cli/output/shaping_words.hpp"

#include <fmt/core.h>

#include <vector>

#include "cli/output/layout.hpp"
#include "cli/output/place_words.hpp"

namespace gristwright::cli {
namespace {

std::string run_words(const Run& run, const char* row) {
    const auto which = run.every == 1 ? fmt::format("in every {}", row)
                                      : fmt::format("in every {} {}", nth(run.every), row);
    return fmt::format("{} {}", which,
                       run.times == 1 ? "once" : fmt::format("{} times", run.times));
}

std::string reached_words(const std::vector<Reached>& reached, const char* row) {
    std::string out;
    for (std::size_t i = 0; i < reached.size(); ++i) {
        const char* before = i == 0 ? "to " : i + 1 == reached.size() ? " and " : ", ";
        out += fmt::format("{}{} in {} {}", before, reached[i].stitches, row, reached[i].row);
    }
    return out;
}

}  // namespace

std::string nth(int n) {
    const int tens = n % 100;
    const char* end = tens >= 11 && tens <= 13 ? "th"
                      : n % 10 == 1            ? "st"
                      : n % 10 == 2            ? "nd"
                      : n % 10 == 3            ? "rd"
                                               : "th";
    return fmt::format("{}{}", n, end);
}

std::string shaping_words(const Shaping& shaping) {
    const char* row = shaping.in_rounds ? "round" : "row";
    if (!shaping.reached.empty()) return reached_words(shaping.reached, row);
    if (shaping.runs.empty()) return "not at all";
    std::vector<std::string> said;
    for (const auto& run : shaping.runs) said.push_back(run_words(run, row));
    return joined(said, ", then ");
}

const char* row_word(const PlanPiece& p) { return goes_round(p) ? "round" : "row"; }

std::string stitches_words(const PlanPiece& p) {
    const auto shape = p.outline.shape;
    const bool straight = shape == Shape::rectangle || shape == Shape::tube;
    return fmt::format("{} stitches{}", p.stitches, straight ? "" : " at the widest");
}

std::string rows_words(const PlanPiece& p) {
    const auto& whole = p.piece->counting.within;
    const auto rows = fmt::format("{} {}s", p.rows, row_word(p));
    if (whole.empty()) return rows;
    if (p.piece->yarn == 1) return fmt::format("{}, among those of the {}", rows, whole);
    return fmt::format("the same {} as the {}, with both yarns", rows, whole);
}

std::string change_words(int from, int to) {
    const char* how = to > from   ? "increase evenly to"
                      : to < from ? "decrease evenly to"
                                  : "go on over";
    return fmt::format("{} {} stitches", how, to);
}

}  // namespace gristwright::cli
