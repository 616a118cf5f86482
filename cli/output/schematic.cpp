#include "cli/output/schematic.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "engine/cloth/spacing_words.hpp"
#include "engine/project/on_the_loom.hpp"

namespace gristwright::cli {
namespace {

constexpr double page_width = 425, margin = 16, tallest = 250;
constexpr std::size_t line_width = 54;  // characters

// A skein's end inside the first piece, as a share of its rows.
struct SkeinEnd {
    std::string name;
    double rows_share;
};

std::vector<SkeinEnd> skein_ends(const Plan& plan, const YarnProfile& yarn) {
    std::vector<SkeinEnd> out;
    const auto& body = plan.pieces.front();
    if (!body.knit || body.piece->count > 1 || body.ours < body.metres.mid) return out;
    double used = 0;
    for (std::size_t s = 0; s + 1 < yarn.skeins.size(); ++s) {
        used += yarn.skeins[s].length.si();
        const double share = used / body.metres.mid.si();
        if (share >= 1) break;
        out.push_back({yarn.skeins[s].name, rows_for_yarn(body.outline, share)});
    }
    return out;
}

// Room beside a piece for its length in words.
double room_beside(const Plan& plan, const Units& units) {
    std::size_t longest = 0;
    for (const auto& piece : plan.pieces)
        longest =
            std::max(longest, characters(units.size(centimetres(flat(piece.outline).height))));
    return 24 + 6.2 * double(longest);
}

// One scale for all pieces, in units per cm.
double scale_of(const Plan& plan, const Units& units) {
    const double widest = page_width - margin - room_beside(plan, units);
    double scale = 1e9;
    for (const auto& piece : plan.pieces) {
        const auto size = flat(piece.outline);
        scale = std::min({scale, widest / size.width, tallest / size.height});
    }
    return scale;
}

void across(Svg& svg, Point from, double length, const std::string& words) {
    svg.line(from, {from.x + length, from.y}, "measure");
    for (const double x : {from.x, from.x + length})
        svg.line({x, from.y - 3}, {x, from.y + 3}, "measure");
    const double centre = std::max(from.x + length / 2, margin + 2.8 * double(characters(words)));
    svg.text({centre, from.y + 14}, words, "label middle");
}

void down(Svg& svg, Point from, double length, const std::string& words) {
    svg.line(from, {from.x, from.y + length}, "measure");
    for (const double y : {from.y, from.y + length})
        svg.line({from.x - 3, y}, {from.x + 3, y}, "measure");
    svg.text({from.x + 6, from.y + length / 2 + 4}, words, "label");
}

std::string width_words(const Outline& o, const Units& units) {
    auto size = units.size(o.width);
    switch (o.shape) {
        case Shape::tube:
        case Shape::cap:
            return size + " round";
        case Shape::taper:
            return size + ", narrowing to " + units.size(o.narrow);
        case Shape::square_from_corner:
            return size + " a side";
        case Shape::circle:
            return size + " across";
        default:
            return size;
    }
}

bool height_told(const Outline& o) {
    return o.shape != Shape::circle && o.shape != Shape::square_from_corner;
}

std::string piece_name(const PlanPiece& p) {
    auto out = capital(p.piece->name);
    if (p.piece->count > 1) out += fmt::format(", {} alike", p.piece->count);
    if (p.ours.si() <= 0) out += " (another yarn)";
    return out;
}

std::string piece_words(const PlanPiece& p) {
    if (p.knit)
        return fmt::format("{}, {}; {} stitches at the widest, {} rows", p.piece->fabric,
                           words(p.outline.shape), p.stitches, p.rows);
    return fmt::format("{}, {}; {} ends, {} picks", p.piece->fabric, words(p.outline.shape),
                       p.panel.ends, p.panel.picks);
}

void draw_ends(Svg& svg, const Outline& o, Point corner, Flat box,
               const std::vector<SkeinEnd>& ends) {
    for (const auto& end : ends) svg.path(row_line(o, corner, box, end.rows_share), "join");
}

// Draws one piece below `y`; returns where the next begins.
double draw_piece(Svg& svg, double y, const PlanPiece& p, double scale, const Units& units,
                  const std::vector<SkeinEnd>& ends) {
    svg.text({margin, y}, piece_name(p), "head");
    y = svg.lines({margin, y + 15}, piece_words(p), line_width, "faint") - 30;
    const auto size = flat(p.outline);
    const Flat box{size.width * scale, size.height * scale};
    const Point corner{margin, y + 26};
    svg.path(outline_path(p.outline, corner, box), "cloth")
        .path(outline_path(p.outline, corner, box), "edge");
    draw_ends(svg, p.outline, corner, box, ends);
    svg.path(work_arrow(p.outline, corner, box), "way");
    const double foot = corner.y + box.height + 9;
    across(svg, {corner.x, foot}, box.width, width_words(p.outline, units));
    if (height_told(p.outline))
        down(svg, {corner.x + box.width + 9, corner.y}, box.height,
             units.size(centimetres(size.height)));
    return foot + 40;
}

double key_row(Svg& svg, double y, const std::string& look, const std::string& words) {
    svg.rect({margin, y - 9}, 16, 10, look).text({margin + 24, y}, words, "label");
    return y + 17;
}

double line_row(Svg& svg, double y, const std::string& look, const std::string& words) {
    svg.line({margin, y - 4}, {margin + 16, y - 4}, look);
    svg.text({margin + 24, y}, words, "label");
    return y + 17;
}

std::string woven_words(const std::string& length, int count) {
    return count == 1 ? length + " of warp for the cloth"
                      : fmt::format("{} of warp for each of {} panels", length, count);
}

// The warp from one end to the other: every panel with its fringes, then what cannot be woven.
double draw_warp(Svg& svg, double y, const PlanPiece& p, const WovenCloth& cloth, const Template& t,
                 const Units& units) {
    const int count = p.piece->count;
    const auto waste = waste_beyond_fringe(t);
    const auto panel = p.panel.warp_per_end - waste / count;
    const auto whole = panel * count + waste;
    const double scale = (page_width - 2 * margin) / whole.si();
    const double thick = std::clamp(p.panel.reed_width.si() * scale, 8.0, 120.0);
    svg.text({margin, y}, "Warp, from one end to the other", "head");
    y = svg.lines({margin, y + 15},
                  fmt::format("{} ends of {}; {} wide in the {}", p.panel.ends, units.yarn(whole),
                              units.size(p.panel.reed_width), spaced_in(cloth)),
                  line_width, "faint") -
        30;
    double x = margin;
    const auto part = [&](Length length, const char* look) {
        svg.rect({x, y + 26}, length.si() * scale, thick, look);
        x += length.si() * scale;
    };
    for (int i = 0; i < count; ++i) {
        part(t.fringe, "fringe");
        part(panel - t.fringe * 2, "cloth");
        part(t.fringe, "fringe");
    }
    part(waste, "waste");
    svg.rect({margin, y + 26}, x - margin, thick, "edge");
    y += 26 + thick + 22;
    y = key_row(svg, y, "cloth", woven_words(units.size(panel - t.fringe * 2), count));
    if (t.fringe.si() > 0)
        y = key_row(svg, y, "fringe", units.size(t.fringe) + " at each end for the fringe");
    return key_row(
               svg, y, "waste",
               fmt::format("{} loom waste{}, {} of yarn", units.size(waste),
                           t.fringe.si() > 0 ? " besides" : "", units.yarn(waste * p.panel.ends))) +
           18;
}

bool lies_folded(const Plan& plan) {
    return std::any_of(plan.pieces.begin(), plan.pieces.end(), [](const auto& p) {
        return p.outline.shape == Shape::tube || p.outline.shape == Shape::cap;
    });
}

double draw_key(Svg& svg, double y, const Plan& plan, const std::vector<SkeinEnd>& ends) {
    svg.path(Path()
                 .move({margin, y - 4})
                 .line({margin + 16, y - 4})
                 .move({margin + 11, y - 8})
                 .line({margin + 16, y - 4})
                 .line({margin + 11, y}),
             "way");
    svg.text({margin + 24, y}, "direction of work", "label");
    y += 17;
    if (lies_folded(plan)) {
        svg.text({margin + 24, y}, "tubes and caps lie flat, folded in half", "label");
        y += 17;
    }
    for (const auto& end : ends)
        y = line_row(svg, y, "join",
                     fmt::format("{} ends near row {:.0f}", shortened(inert(end.name), 24),
                                 end.rows_share * plan.pieces.front().rows));
    return y;
}

double draw_all(Svg& svg, const JudgedPlan& judged, const Question& q) {
    const auto& plan = judged.plan;
    const auto ends = skein_ends(plan, q.yarn);
    const double scale = scale_of(plan, q.units);
    svg.text({margin, 26}, fmt::format("{}, {}", plan.article->title, words(plan.article->craft)),
             "head");
    double y = svg.lines({margin, 42}, capital(reach_line(plan, q.units)), line_width, "label");
    y = svg.lines({margin, y},
                  fmt::format("{}; chance that it reaches {}", q.units.yarn_range(plan.need),
                              percent(plan.certainty)),
                  line_width, "label");
    y += 14;
    for (const auto& piece : plan.pieces) {
        const bool first = &piece == &plan.pieces.front();
        y = draw_piece(svg, y, piece, scale, q.units, first ? ends : std::vector<SkeinEnd>{});
        if (piece.woven) y = draw_warp(svg, y, piece, *piece.woven, *plan.article, q.units);
    }
    return draw_key(svg, y, plan, ends) + 6;
}

std::string said(const JudgedPlan& judged, const Question& q) {
    std::vector<std::string> out{capital(reach_line(judged.plan, q.units))};
    for (const auto& p : judged.plan.pieces)
        out.push_back(fmt::format("{}: {}; {}, {} long", piece_name(p), piece_words(p),
                                  width_words(p.outline, q.units),
                                  q.units.size(centimetres(flat(p.outline).height))));
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
