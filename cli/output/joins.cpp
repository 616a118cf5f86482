#include "cli/output/joins.hpp"

#include <fmt/core.h>

#include "cli/output/describe.hpp"
#include "cli/output/place_words.hpp"

namespace gristwright::cli {
namespace {

Line end_of_warp(const Placed& placed, double share) {
    Bounds box;
    box.hold(placed.edge);
    const double x = box.low.x + share * box.width();
    return {{x, box.low.y}, {x, box.high.y}};
}

// Where that piece lies, the `which`th of those alike.
std::size_t part_of(const Assembled& article, const PlanPiece& piece, int which) {
    std::size_t part = 0;
    while (article.parts.at(part).piece != &piece || --which > 0) ++part;
    return part;
}

Join join_at(const Assembled& article, const Plan& plan, const SkeinEnd& end) {
    const auto& place = end.place;
    const auto part = part_of(article, plan.pieces[place.piece], place.which);
    const auto& placed = article.parts[part];
    return {end.skein, part, place.warp, in_work_at(plan, place),
            place.warp ? end_of_warp(placed, place.share)
                       : placed.row(placed.backwards ? 1 - place.share : place.share)};
}

}  // namespace

std::vector<Join> joins(const Assembled& article, const Plan& plan, const YarnProfile& yarn) {
    std::vector<Join> out;
    for (const auto& end : skein_ends(plan, yarn)) out.push_back(join_at(article, plan, end));
    return out;
}

std::string words(const Join& join, const Assembled& article, const std::string& skein) {
    const auto& p = *article.parts[join.part].piece;
    const char* what = join.in_warp    ? "warp end"
                       : p.woven       ? "pick"
                       : goes_round(p) ? "round"
                                       : "row";
    return fmt::format("{} ends, {} {}", skein, what, join.number);
}

}  // namespace gristwright::cli
