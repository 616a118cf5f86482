#include "cli/output/article_drawing.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/article_words.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/schematic.hpp"

namespace gristwright::cli {
namespace {

constexpr double card_width = 300, card_height = 210, room_right = 66, room_below = 30,
                 card_edge = 6;

std::vector<const Placed*> from_below(const Assembled& article) {
    std::vector<const Placed*> out;
    for (const auto& placed : article.parts) out.push_back(&placed);
    std::stable_sort(out.begin(), out.end(),
                     [](const auto* a, const auto* b) { return a->layer < b->layer; });
    return out;
}

}  // namespace

void draw_parts(Svg& svg, const Assembled& article, const Pose& pose, bool with_loose) {
    for (const auto& thread : article.fringe) svg.path(path_of(pose.at(thread), false), "thread");
    for (const auto* placed : from_below(article)) {
        if (placed->loose && !with_loose) continue;
        const bool ours = placed->piece->ours.si() > 0;
        svg.path(path_of(pose.at(placed->edge), true), ours ? "piece" : "piece other");
    }
}

void measure_across(Svg& svg, Point from, double length, const std::string& words) {
    svg.line(from, {from.x + length, from.y}, "measure");
    for (const double x : {from.x, from.x + length})
        svg.line({x, from.y - 3}, {x, from.y + 3}, "measure");
    svg.text({from.x + length / 2, from.y + 16}, words, "label middle");
}

void measure_down(Svg& svg, Point from, double length, const std::string& words) {
    svg.line(from, {from.x, from.y + length}, "measure");
    for (const double y : {from.y, from.y + length})
        svg.line({from.x - 3, y}, {from.x + 3, y}, "measure");
    svg.text({from.x + 6, from.y + length / 2 + 4}, words, "label");
}

std::string width_laid(const Plan& plan, const Assembled& article, const Units& units) {
    const auto own = units.size(centimetres(flat(plan.pieces.front().outline).width));
    const auto all = units.size(centimetres(article.measured().width()));
    const bool edged = plan.article->article == "shawl" && plan.piece_named("edge");
    return edged && own != all ? all + " with its edge" : all;
}

Svg card_drawing(const Plan& plan, const Units& units) {
    const auto article = assembled(plan);
    const auto box = article.bounds(false);
    const double scale = std::min((card_width - room_right - card_edge) / box.width(),
                                  (card_height - room_below - card_edge) / box.height());
    const double wide = box.width() * scale, high = box.height() * scale;
    const double left = card_edge + std::max(0.0, (card_width - room_right - card_edge - wide) / 2);
    const Pose pose{{left - box.low.x * scale, card_edge - box.low.y * scale}, 0, scale, false};
    const auto one = article.measured();
    const auto from = pose.at(one.low), to = pose.at(one.high);
    const auto across = width_laid(plan, article, units),
               down = units.size(centimetres(one.height()));
    Svg svg(card_width, high + room_below + card_edge, plan.article->title,
            fmt::format("{}, laid flat; {} wide and {} high.", capital(size_in_words(plan, units)),
                        across, down));
    draw_parts(svg, article, pose, false);
    measure_across(svg, {from.x, card_edge + high + 8}, to.x - from.x, across);
    measure_down(svg, {left + wide + 8, from.y}, to.y - from.y, down);
    return svg;
}

}  // namespace gristwright::cli
