#include <fmt/core.h>

#include <algorithm>
#include <optional>

#include "cli/output/article_words.hpp"
#include "cli/output/figure.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/line_up.hpp"
#include "cli/output/page_parts.hpp"

namespace gristwright::cli {
namespace {

// Points: 72 to the inch, so that letters print as large as they say.
constexpr double sheet_width = 1191, sheet_height = 842, sheet_edge = 36, sheet_head = 86,
                 sheet_foot = 24;
constexpr double between_drawings = 14, caption_line = 11.5, letter = 5.4;
constexpr std::size_t caption_width = 17;                    // characters
constexpr double largest_scale = 3.2, smallest_scale = 0.6;  // points to the cm

struct PosterCell {
    const LinedUp* one = nullptr;  // nothing: the figure
    double width = 0, height = 0;  // of its drawing
    Point at{};                    // its lower left corner
    double room = 0;               // across, with its words
    std::vector<std::string> title, size;

    double height_of_words() const {
        return caption_line * double(title.size() + size.size()) + 12;
    }
};

double widest(const std::vector<std::string>& lines) {
    double out = 0;
    for (const auto& line : lines) out = std::max(out, letter * double(characters(line)));
    return out;
}

std::vector<PosterCell> cells_of(const std::vector<LinedUp>& all, double scale,
                                 const Units& units) {
    const auto figure = drawn_figure(scale);
    std::vector<PosterCell> out{
        {nullptr, figure.width(), figure.height(), {}, std::max(40.0, figure.width()), {}, {}}};
    out[0].size = {units.size(centimetres(figure_height))};
    for (const auto& one : all) {
        const auto box = one.bounds();
        PosterCell cell{&one, scale * (box.width() + 2), scale * (box.height() + 2), {}, 0, {}, {}};
        cell.title = broken(one.judged->plan.article->title, caption_width);
        cell.size = broken(size_in_words(one, units), caption_width);
        cell.room = std::max({cell.width, widest(cell.title) * 1.1, widest(cell.size)});
        out.push_back(std::move(cell));
    }
    return out;
}

// In rows from the top, each as high as its first; whether the sheet holds them.
bool set_out(std::vector<PosterCell>& cells) {
    Point at{sheet_edge, sheet_head};
    double row = 0, words = 0;
    std::size_t first = 0;
    const auto end_row = [&](std::size_t next) {
        for (auto i = first; i < next; ++i) cells[i].at.y = at.y + row;
        first = next;
        at = {sheet_edge, at.y + row + words};
        row = words = 0;
    };
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (at.x + cells[i].room > sheet_width - sheet_edge) end_row(i);
        cells[i].at.x = at.x;
        at.x += cells[i].room + between_drawings;
        row = std::max(row, cells[i].height);
        words = std::max(words, cells[i].height_of_words());
    }
    end_row(cells.size());
    return at.y <= sheet_height - sheet_foot;
}

// The largest scale at which all stand on the sheet; nothing: too many at any.
std::optional<std::pair<double, std::vector<PosterCell>>> fitted(const std::vector<LinedUp>& all,
                                                                 const Units& units) {
    for (double scale = largest_scale; scale > smallest_scale; scale *= 0.97) {
        auto cells = cells_of(all, scale, units);
        if (set_out(cells)) return std::pair(scale, std::move(cells));
    }
    return std::nullopt;
}

void draw(Svg& svg, const PosterCell& cell, double scale) {
    svg.place(cell.one ? drawn(*cell.one, scale) : drawn_figure(scale),
              {cell.at.x, cell.at.y - cell.height});
    double y = cell.at.y;
    for (const auto& line : cell.title)
        svg.text({cell.at.x, y += caption_line}, line, "small strong");
    for (const auto& line : cell.size) svg.text({cell.at.x, y += caption_line}, line, "small");
}

std::string spoken(const std::vector<LinedUp>& all, const Units& units) {
    std::string out;
    for (const auto& one : all)
        out += fmt::format("{}: {}. ", one.judged->plan.article->title, size_in_words(one, units));
    return out + fmt::format("The figure is {} tall.", units.size(centimetres(figure_height)));
}

}  // namespace

Svg line_up_poster(const Ranked& ranked, const Question& q) {
    auto made = all_made(ranked);
    const auto every = made.size();
    auto all = line_up(made, q);
    auto set = fitted(all, q.units);
    for (; !set; set = fitted(all, q.units)) {
        made.pop_back();
        all = line_up(made, q);
    }
    const auto& [scale, cells] = *set;
    const auto& name = q.measured.batch.name;
    const auto title = name.empty() ? "Your batch" : shortened(inert(name), 60);
    Svg out(sheet_width, sheet_height, title + ": what it makes", spoken(all, q.units));
    out.text({sheet_edge, 40}, title, "title");
    out.text({sheet_edge, 62},
             fmt::format("{} of {}: each alone at its largest size, all at one scale",
                         q.units.yarn(q.yarn.length.mid), yarn_in_words(q.measured.batch)),
             "label");
    auto key =
        fmt::format("solid: {} sure; dotted: with an even chance", percent(q.request.certainty));
    if (const auto more = every - made.size(); more > 0)
        key += fmt::format("; {} more {} not drawn", more, more == 1 ? "is" : "are");
    out.text({sheet_width - sheet_edge, 62}, key, "label end");
    for (const auto& cell : cells) draw(out, cell, scale);
    return out;
}

}  // namespace gristwright::cli
