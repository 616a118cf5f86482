#include "cli/output/warp_picture.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/assembled.hpp"
#include "engine/cloth/spacing_words.hpp"
#include "engine/project/on_the_loom.hpp"

namespace gristwright::cli {
namespace {

// Of the loom's waste, what is tied on in front; the rest stays behind the heddle (judgement: the
// drawing alone leans on it).
constexpr double tied_on = 1.0 / 3;
constexpr double warp_bar_height = 26, holes_shown = 12;

struct WarpPart {
    Length length;
    const char* look;
    const char* name;  // empty: not named
};

std::vector<WarpPart> parts_of(const PlanPiece& p, const Template& t) {
    const int count = p.piece->count;
    const auto waste = waste_beyond_fringe(t);
    const auto edge = t.fringe.si() > 0 ? t.fringe : t.hem;
    const auto cloth = p.panel.warp_per_end - waste / count - edge * 2;
    const char* end = t.fringe.si() > 0 ? "fringe" : "hem";
    std::vector<WarpPart> out{{waste * tied_on, "waste", "tied on"}};
    for (int i = 0; i < count; ++i) {
        if (edge.si() > 0) out.push_back({edge, "fringe", i == 0 ? end : ""});
        out.push_back({cloth, "cloth", i == 0 ? "cloth" : ""});
        if (edge.si() > 0) out.push_back({edge, "fringe", ""});
    }
    out.push_back({waste * (1 - tied_on), "waste", "behind the heddle"});
    return out;
}

// A hole, a slot, a hole: what a rigid heddle is; or the dents of a reed. Ends go through as
// planned.
void draw_heddle(Svg& svg, Point at, double width, const WovenCloth& cloth) {
    const bool reed = cloth.by == Spaced::reed;
    const double step = width / holes_shown, high = 46;
    svg.rect(at, width, high, "waste");
    for (int i = 0; i < int(holes_shown); ++i) {
        const double x = at.x + step * (i + 0.5);
        const bool hole = !reed && i % 2 == 1;
        svg.rect({x - 2.5, at.y + (hole ? high / 2 - 5 : 5)}, 5, hole ? 10 : high - 10, "dent");
        const int ends = cloth.sleying.in_dent(i);
        for (int end = 0; end < ends; ++end) {
            const double off = (end - (ends - 1) / 2.0) * 2.2;
            svg.line({x + off, at.y - 7}, {x + off, at.y + high + 7}, "warp-end");
        }
    }
    svg.rect(at, width, high, "edge");
}

std::string heddle_words(const WovenCloth& cloth, const PlanPiece& p, const Units& units) {
    const auto* in_each = cloth.by == Spaced::reed     ? ", 1 end to a dent"
                          : cloth.heddles_together > 1 ? ""
                                                       : ", 1 end in each slot and hole";
    return fmt::format("{}{}; {} ends, {} wide in it", spacing_words(cloth),
                       cloth.sleying.order == "1" ? in_each : "", p.panel.ends,
                       units.size(p.panel.reed_width));
}

// The bar from end to end, each part named and measured under it.
double draw_bar(Svg& svg, Point at, double width, const std::vector<WarpPart>& parts,
                const Units& units) {
    double whole = 0;
    for (const auto& part : parts) whole += part.length.si();
    double x = at.x;
    for (const auto& part : parts) {
        const double wide = width * part.length.si() / whole;
        svg.rect({x, at.y}, wide, warp_bar_height, part.look);
        if (*part.name && part.look == std::string_view("cloth"))
            svg.text({x + wide / 2, at.y + warp_bar_height / 2 + 5}, units.size(part.length),
                     "label strong middle");
        x += wide;
    }
    svg.rect(at, width, warp_bar_height, "edge");
    return at.y + warp_bar_height;
}

}  // namespace

double draw_warp(Svg& svg, Point at, double width, const PlanPiece& p, const Template& t,
                 const Units& units) {
    const auto parts = parts_of(p, t);
    svg.text(at, "Warp, from one end to the other", "head");
    at.y =
        svg.lines({at.x, at.y + 17},
                  fmt::format("{} ends of {}; warp {}, weft {}", p.panel.ends,
                              kept_together(units.size(p.warp / p.panel.ends)),
                              kept_together(units.yarn(p.warp)), kept_together(units.yarn(p.weft))),
                  70, "label");
    at.y = draw_bar(svg, {at.x, at.y - 4}, width, parts, units) + 16;
    for (const auto& part : parts) {
        if (!*part.name) continue;
        svg.rect({at.x, at.y - 9}, 16, 10, part.look);
        const bool many = p.piece->count > 1 && part.look == std::string_view("cloth");
        const bool ends = part.look == std::string_view("fringe");
        svg.text({at.x + 24, at.y},
                 fmt::format("{}: {}{}", part.name, units.size(part.length),
                             many   ? fmt::format(" for each of {} panels", p.piece->count)
                             : ends ? " at each end"
                                    : ""),
                 "label");
        at.y += 18;
    }
    at.y += 10;
    if (p.woven->by == Spaced::heddle || p.woven->by == Spaced::reed) {
        draw_heddle(svg, {at.x, at.y}, 150, *p.woven);
        at.y = std::max(at.y + 64, svg.lines({at.x + 164, at.y + 14},
                                             heddle_words(*p.woven, p, units), 44, "label"));
    }
    return at.y + 12;
}

}  // namespace gristwright::cli
