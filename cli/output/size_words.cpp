#include "cli/output/size_words.hpp"

#include <fmt/core.h>

namespace gristwright::cli {
namespace {

std::string short_measure(const std::string& measure) {
    static constexpr std::pair<std::string_view, const char*> shorter[] = {
        {"round the ", ""},      {"side of a ", ""},        {"length of a ", ""},
        {"foot length", "foot"}, {"straight edge", "edge"}, {"short side", "side"},
    };
    for (const auto& [begins, instead] : shorter)
        if (measure.rfind(begins, 0) == 0) return instead + measure.substr(begins.size());
    return measure;
}

bool one_straight_piece(const Plan& plan) {
    const auto& first = plan.pieces.front();
    return plan.pieces.size() == 1 && first.piece->count == 1 &&
           first.outline.shape == Shape::rectangle;
}

}  // namespace

std::string short_size(const Plan& plan, const Units& units) {
    const auto& measure = plan.article->measure;
    const auto& outline = plan.pieces.front().outline;
    if (measure == "length" && one_straight_piece(plan))
        return units.sizes(outline.length, outline.width);
    return fmt::format("{} {}", short_measure(measure), units.size(plan.size));
}

bool smaller_than_ideal(const Plan& plan) { return plan.reach == Reach::enough_if_smaller; }

}  // namespace gristwright::cli
