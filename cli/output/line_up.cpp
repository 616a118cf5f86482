#include "cli/output/line_up.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/figure.hpp"

namespace gristwright::cli {
namespace {

constexpr double even_chance = 0.5, noticeable = 1.03;
constexpr double rim = 1;  // cm of room round a drawing

// Turned so that it stands on 0, its middle at 0.
Pose on_the_ground(const Assembled& article) {
    const auto box = article.bounds(false);
    return {{-(box.low.x + box.high.x) / 2, -box.high.y}, 0, 1, false};
}

void add(Bounds& out, const Assembled& article) {
    const auto pose = on_the_ground(article);
    const auto box = article.bounds(false);
    out.hold({pose.at(box.low), pose.at(box.high)});
}

Pose placed(const Pose& ground, Point origin, double scale) {
    return {
        {origin.x + scale * ground.shift.x, origin.y + scale * ground.shift.y}, 0, scale, false};
}

}  // namespace

std::optional<Length> hopeful_size(const Plan& plan) {
    const auto& t = *plan.article;
    if (t.fitted || plan.reach == Reach::short_of || plan.size >= t.largest) return std::nullopt;
    double low = plan.size.si(), high = t.largest.si();
    if (plan.certainty_at(metres(high)) >= even_chance) low = high;
    for (int i = 0; i < 40 && low < high; ++i) {
        const double middle = (low + high) / 2;
        (plan.certainty_at(metres(middle)) >= even_chance ? low : high) = middle;
    }
    if (low < noticeable * plan.size.si()) return std::nullopt;
    return metres(low);
}

std::vector<LinedUp> line_up(const std::vector<const JudgedPlan*>& made, const Question& q) {
    std::vector<LinedUp> out;
    for (const auto* judged : made) {
        LinedUp one{judged, assembled(judged->plan), nullptr, {}};
        if (const auto size = hopeful_size(judged->plan)) {
            auto request = q.request;
            request.size = size;
            one.hoped = std::make_shared<const Plan>(plan(
                *judged->plan.article, q.yarn, q.catalogue->fabrics, q.measured.owned, request));
            one.hopeful = assembled(*one.hoped);
        }
        out.push_back(std::move(one));
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) {
        return a.bounds().height() > b.bounds().height();
    });
    return out;
}

Bounds LinedUp::bounds() const {
    Bounds out;
    add(out, sure);
    if (hoped) add(out, hopeful);
    return out;
}

std::string size_in_words(const LinedUp& one, const Units& units) {
    auto out = size_in_words(one.judged->plan, units);
    if (one.hoped) out += ", perhaps " + size_in_words(*one.hoped, units);
    return kept_together(out);
}

Svg drawn(const LinedUp& one, double scale) {
    const auto box = one.bounds();
    Svg svg(scale * (box.width() + 2 * rim), scale * (box.height() + 2 * rim), "", "");
    const Point origin{scale * (rim - box.low.x), scale * (rim - box.low.y)};
    if (one.hoped)
        for (const auto& placed_part : one.hopeful.parts)
            if (!placed_part.loose)
                svg.path(
                    path_of(placed(on_the_ground(one.hopeful), origin, scale).at(placed_part.edge),
                            true),
                    "hope");
    draw_parts(svg, one.sure, placed(on_the_ground(one.sure), origin, scale), false);
    return svg;
}

Svg drawn_figure(double scale) {
    Bounds box;
    const auto lines = standing_figure();
    for (const auto& line : lines) box.hold(line);
    Svg svg(scale * (box.width() + 2 * rim), scale * (box.height() + 2 * rim),
            "A standing figure, for scale", fmt::format("{:.0f} cm tall.", figure_height));
    const Pose pose{{scale * (rim - box.low.x), scale * (rim - box.low.y)}, 0, scale, false};
    for (const auto& line : lines) svg.path(path_of(pose.at(line), true), "figure");
    return svg;
}

}  // namespace gristwright::cli
