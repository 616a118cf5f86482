#include "cli/output/schematic.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/edge_counts.hpp"
#include "cli/output/joins.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/place_words.hpp"
#include "cli/output/shaping_words.hpp"
#include "cli/output/short_names.hpp"
#include "cli/output/warp_picture.hpp"
#include "engine/project/order.hpp"

namespace gristwright::cli {
namespace {

constexpr double page_width = 560, margin = 18;
// The article put together: its height to the left, where skeins end to the right.
constexpr double whole_left = 78, whole_width = 290, whole_height = 300, ends_left = 392;
// Each piece by itself: what is counted on its edges, and words beside it.
constexpr double piece_left = 24, piece_width = 200, piece_height = 76, words_left = 304;
constexpr double between_lines = 16;
constexpr std::size_t longest_name_at_join = 14;

struct Whole {
    Assembled article;
    std::vector<Join> ends;
    std::vector<std::string> skeins;  // their names, cut so that they can be told apart
    std::string taking;               // how they are taken, where that is to be seen
};

Whole whole_of(const JudgedPlan& judged, const Question& q) {
    Whole out{assembled(judged.plan), {}, {}, turns_in_words(judged.plan, q.yarn)};
    out.ends = joins(out.article, judged.plan, q.yarn);
    if (out.taking.empty() && !out.ends.empty())
        out.taking =
            "Skeins are taken one after another as listed, each as long as it most likely is.";
    for (const auto& skein : q.yarn.skeins) out.skeins.push_back(skein.name);
    out.skeins = short_names(out.skeins, longest_name_at_join);
    return out;
}

std::string end_words(const Join& join, const Whole& whole) {
    return words(join, whole.article, whole.skeins[join.skein]);
}

// Where a line leads to its words: from its right end; the end of a warp from wherever they stand.
Point lead_from(const Line& line, bool in_warp, double y) {
    if (in_warp) return {line.front().x, std::clamp(y, line.front().y, line.back().y)};
    return *std::max_element(line.begin(), line.end(), [](Point a, Point b) { return a.x < b.x; });
}

// Words stand beside their lines, each a line's height below the last. From the left one of a pair
// no line leads across the other: the skein's name stands at it.
double draw_ends(Svg& svg, const Whole& whole, const Pose& pose, double top) {
    struct Label {
        const Join* join;
        Line line;
        double y;
    };
    const auto box = whole.article.bounds(false);
    const double middle = pose.at(Point{(box.low.x + box.high.x) / 2, 0}).x;
    std::vector<Label> labels;
    for (const auto& join : whole.ends) {
        labels.push_back({&join, pose.at(join.line), 0});
        labels.back().y = join.in_warp ? top : lead_from(labels.back().line, false, 0).y;
        svg.path(path_of(labels.back().line, false), "join");
    }
    std::stable_sort(labels.begin(), labels.end(),
                     [](const auto& a, const auto& b) { return a.y < b.y; });
    double y = top;
    for (const auto& label : labels) {
        y = std::max(y + between_lines, label.y + 4);
        const auto from = lead_from(label.line, label.join->in_warp, y - 4);
        if (from.x < middle - 2 && !label.join->in_warp)
            svg.text({from.x, from.y - 5}, whole.skeins[label.join->skein], "asked-text middle");
        else
            svg.path(Path().move(from).line({ends_left - 16, y - 4}).line({ends_left - 4, y - 4}),
                     "lead");
        svg.text({ends_left, y}, end_words(*label.join, whole), "label");
    }
    return y;
}

// "a", "b", ... in the middle of each piece, once.
void draw_letters(Svg& svg, const Whole& whole, const Plan& plan, const Pose& pose) {
    const auto pieces = pieces_as_worked(plan);
    for (std::size_t i = 0; i < pieces.size() && pieces.size() > 1; ++i)
        for (const auto& placed : whole.article.parts) {
            if (placed.piece != pieces[i]) continue;
            const auto middle = pose.at(placed.row(0.5));
            const auto at =
                middle.size() % 2 == 0
                    ? Point{(middle[middle.size() / 2 - 1].x + middle[middle.size() / 2].x) / 2,
                            (middle[middle.size() / 2 - 1].y + middle[middle.size() / 2].y) / 2}
                    : middle[middle.size() / 2];
            svg.circle(at, 8.5, "tag")
                .text({at.x, at.y + 4.5}, std::string(1, char('a' + i % 26)),
                      "label strong middle");
            break;
        }
}

double draw_whole(Svg& svg, double y, const Whole& whole, const JudgedPlan& judged,
                  const Question& q) {
    const auto box = whole.article.bounds(true);
    const double scale = std::min(whole_width / box.width(), whole_height / box.height());
    const double high = box.height() * scale;
    const Pose pose{{whole_left - box.low.x * scale, y - box.low.y * scale}, 0, scale, false};
    draw_parts(svg, whole.article, pose, true);
    const double ends = draw_ends(svg, whole, pose, y - 4);
    draw_letters(svg, whole, judged.plan, pose);
    const auto one = whole.article.measured();
    const auto from = pose.at(one.low), to = pose.at(one.high);
    measure_across(svg, {from.x, y + high + 9}, to.x - from.x,
                   width_laid(judged.plan, whole.article, q.units));
    const double left = whole_left - 10;
    svg.line({left, from.y}, {left, to.y}, "measure");
    for (const double end : {from.y, to.y}) svg.line({left - 3, end}, {left + 3, end}, "measure");
    svg.text({left - 6, (from.y + to.y) / 2 + 4}, q.units.size(centimetres(one.height())),
             "label end");
    return std::max(y + high + 34, ends + 20);
}

std::string width_words(const Outline& o, const Units& units) {
    auto size = units.size(o.width);
    switch (o.shape) {
        case Shape::tube:
        case Shape::cap:
            return size + " round";
        case Shape::square_from_corner:
            return size + " a side";
        case Shape::circle:
            return size + " across";
        case Shape::taper:
            return size + " to " + units.size(o.narrow);
        default:
            return size;
    }
}

bool height_told(const Outline& o) {
    return o.shape != Shape::circle && o.shape != Shape::square_from_corner;
}

std::string piece_name(const PlanPiece& p, std::size_t place, bool lettered) {
    auto out = capital(p.piece->name);
    if (lettered) out = fmt::format("{}: {}", char('a' + place % 26), p.piece->name);
    if (p.piece->count > 1) out += fmt::format(", {} alike", p.piece->count);
    if (p.ours.si() <= 0) out += " (another yarn)";
    return out;
}

std::string length_words(const PlanPiece& p) {
    return p.knit ? fmt::format("{} {}s", p.rows, row_word(p))
                  : fmt::format("{} picks", p.panel.picks);
}

std::string cloth_words(const PlanPiece& p) {
    return fmt::format("{}, {}", p.piece->fabric, words(p.outline.shape));
}

std::string yarn_words(const PlanPiece& p, const Units& units) {
    return fmt::format("{}, {}", units.yarn(p.metres.mid), units.mass(p.mass));
}

double piece_scale(const Plan& plan) {
    double out = 1e9;
    for (const auto& piece : plan.pieces) {
        const auto size = flat(piece.outline);
        out = std::min({out, piece_width / size.width, piece_height / size.height});
    }
    return out;
}

// The arrow of the work; turned round where a piece is worked from its narrow end.
Path arrow_of(const PlanPiece& p, Point corner, Flat box, bool backwards) {
    const auto arrow = work_arrow(p.outline, corner, box);
    if (!backwards) return arrow;
    Line turned;
    for (const auto& at : arrow.along()) turned.push_back({at.x, 2 * corner.y + box.height - at.y});
    return Path().move(turned[0]).line(turned[1]).move(turned[2]).line(turned[3]).line(turned[4]);
}

void draw_outline(Svg& svg, Point corner, Flat box, const PlanPiece& p, bool backwards,
                  const Units& units) {
    svg.path(outline_path(p.outline, corner, box), p.ours.si() > 0 ? "piece" : "piece other");
    if (std::min(box.width, box.height) > 20) svg.path(arrow_of(p, corner, box, backwards), "way");
    if (height_told(p.outline))
        measure_down(svg, {corner.x + box.width + 9, corner.y}, box.height,
                     units.size(centimetres(flat(p.outline).height)));
}

struct Entry {
    const PlanPiece& piece;
    std::string name;
    bool backwards;
};

double draw_words(Svg& svg, double y, const Entry& entry, const std::string& slope,
                  const Units& units) {
    const auto& p = entry.piece;
    svg.text({words_left, y}, entry.name, "head");
    for (const auto& said : {cloth_words(p), width_words(p.outline, units) + "; " + length_words(p),
                             yarn_words(p, units), slope})
        if (!said.empty())
            y = svg.lines({words_left, y + 17}, kept_together(said), 36, "label") - 15;
    return y;
}

// Draws one piece below `y`; returns where the next begins.
double draw_piece(Svg& svg, double y, const Entry& entry, double scale, const Units& units) {
    const auto& p = entry.piece;
    const auto size = flat(p.outline);
    const Flat box{size.width * scale, size.height * scale};
    const auto counts = edge_counts(p, entry.backwards);
    const bool down = p.outline.shape == Shape::triangle || p.outline.shape == Shape::half_circle ||
                      p.outline.shape == Shape::crescent;
    const auto& above = down ? counts.first : counts.last;
    const auto& below = down ? counts.last : counts.first;
    const Point corner{piece_left, y + (above.empty() ? 0 : between_lines)};
    if (!above.empty()) svg.text({piece_left, y + 10}, above, "label");
    draw_outline(svg, corner, box, p, entry.backwards, units);
    const double foot = corner.y + box.height + between_lines;
    if (!below.empty()) svg.text({piece_left, foot}, below, "label");
    const double beside = draw_words(svg, y + 12, entry, counts.slope, units);
    return std::max(foot + 20, beside + 24);
}

bool is_backwards(const Whole& whole, const PlanPiece& piece) {
    return std::any_of(whole.article.parts.begin(), whole.article.parts.end(),
                       [&](const Placed& one) { return one.piece == &piece && one.backwards; });
}

bool lies_folded(const Plan& plan) {
    return std::any_of(plan.pieces.begin(), plan.pieces.end(), [](const auto& p) {
        return p.outline.shape == Shape::tube || p.outline.shape == Shape::cap;
    });
}

double draw_key(Svg& svg, double y, const Plan& plan, const Whole& whole) {
    svg.path(Path()
                 .move({margin, y - 4})
                 .line({margin + 16, y - 4})
                 .move({margin + 11, y - 8})
                 .line({margin + 16, y - 4})
                 .line({margin + 11, y}),
             "way");
    auto said = std::string("direction of work");
    if (lies_folded(plan)) said += "; tubes and caps lie flat, folded in half";
    svg.text({margin + 24, y}, said, "label");
    if (!whole.taking.empty()) y = svg.lines({margin + 24, y + 18}, whole.taking, 80, "faint");
    return y + 6;
}

double draw_head(Svg& svg, const JudgedPlan& judged, const Question& q) {
    const auto& plan = judged.plan;
    svg.text({margin, 28}, fmt::format("{}, {}", plan.article->title, words(plan.article->craft)),
             "title");
    double y =
        svg.lines({margin, 50}, kept_together(capital(reach_line(plan, q.units))), 78, "label");
    return svg.lines(
        {margin, y + 2},
        kept_together(fmt::format("{}; chance that it reaches {}", q.units.yarn_range(plan.need),
                                  percent(plan.certainty))),
        78, "label");
}

double draw_all(Svg& svg, const JudgedPlan& judged, const Question& q) {
    const auto& plan = judged.plan;
    const auto whole = whole_of(judged, q);
    double y = draw_whole(svg, draw_head(svg, judged, q) + 10, whole, judged, q) + 8;
    const double scale = piece_scale(plan);
    const auto pieces = pieces_as_worked(plan);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto& piece = *pieces[i];
        const Entry entry{piece, piece_name(piece, i, pieces.size() > 1),
                          is_backwards(whole, piece)};
        y = draw_piece(svg, y, entry, scale, q.units);
        if (piece.woven && !is_on_frame(*plan.article))
            y = draw_warp(svg, {margin, y + 8}, page_width - 2 * margin, piece, *plan.article,
                          q.units);
    }
    return draw_key(svg, y + 12, plan, whole) + 14;
}

std::string said(const JudgedPlan& judged, const Question& q) {
    std::vector<std::string> out{capital(reach_line(judged.plan, q.units))};
    const auto whole = whole_of(judged, q);
    for (const auto& p : judged.plan.pieces)
        out.push_back(fmt::format("{}: {}; {}, {} long; {}", piece_name(p, 0, false),
                                  cloth_words(p), width_words(p.outline, q.units),
                                  q.units.size(centimetres(flat(p.outline).height)),
                                  length_words(p)));
    for (const auto& join : whole.ends)
        out.push_back(fmt::format("{} of the {}", end_words(join, whole),
                                  whole.article.parts[join.part].piece->piece->name));
    return joined(out, ". ");
}

}  // namespace

Svg plan_picture(const JudgedPlan& judged, const Question& q) {
    Svg measured(page_width, 0, "", "");  // drawn once to learn its height
    const double height = draw_all(measured, judged, q);
    Svg out(page_width, height, judged.plan.article->title + ", drawn to scale", said(judged, q));
    draw_all(out, judged, q);
    return out;
}

}  // namespace gristwright::cli
