#include "cli/output/split_picture.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/short_names.hpp"
#include "cli/output/split_words.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;

constexpr double bar_left = 8, bar_right = chart_width - 8, bar_height = 14;
constexpr double room_for_letter = 9, key_line = 16;
constexpr std::size_t longest_name_above_bar = 40, longest_line = 44;

struct BarPart {
    Length length;
    std::string letter, look;
    bool cut = false;  // wound off here
};

// One look for each role, whatever else is in the split: solid, striped, lined.
std::string look_of(const allocation::Wish& wish) {
    return wish.main ? "share-main" : wish.sample ? "share-sample" : "share-further";
}

std::vector<BarPart> parts_of(std::size_t skein, const Split& s, const SplitAsked& asked,
                              const Question& q) {
    std::vector<BarPart> out;
    for (const auto& cut : s.cuts)
        if (cut.skein == skein)
            out.push_back({cut.length, std::string(1, letter_of(s, cut.wish)),
                           look_of(asked.request.wishes[cut.wish]), cut.ball_length > all_of_it});
    if (s.placed.list.reserve == skein)
        out.push_back({centimetres(static_cast<double>(s.problem.reserve)), "~", "reserve", false});
    const auto left = left_in(skein, s, q);
    if (left > all_of_it) out.push_back({left, "", "share-left", false});
    return out;
}

// A share of a bar; stripes and lines tell the roles apart where colours do not.
void share(Svg& svg, Point corner, double wide, double high, const std::string& look) {
    svg.rect(corner, wide, high, look);
    if (look == "share-sample")
        for (double x = corner.x + 3; x < corner.x + wide - 1; x += 5)
            svg.line({x, corner.y}, {x, corner.y + high}, "stripe");
    if (look == "share-further")
        svg.line({corner.x, corner.y + high / 2}, {corner.x + wide, corner.y + high / 2}, "stripe");
}

// "A 12 m, 3.3 g; B 127 m, 35 g; left 27 m, 7.5 g": the small ones too, which are wound off first.
std::string skein_words(const std::vector<BarPart>& parts, const SkeinGrist& skein,
                        const Units& units) {
    std::vector<std::string> said;
    for (const auto& part : parts)
        said.push_back(kept_together(fmt::format(
            "{} {}, {}", part.letter.empty() ? "left" : part.letter, units.yarn(part.length),
            units.mass(part.length * skein.linear_density.mid))));
    return joined(said, "; ");
}

// Where the knife goes: across the bar, with a notch above it.
void cut_mark(Svg& svg, double x, double top) {
    svg.line({x, top - 5}, {x, top + bar_height + 4}, "cut");
    svg.path(Path().move({x - 4, top - 9}).line({x, top - 3}).line({x + 4, top - 9}).close(),
             "notch");
}

// Draws a skein's bar below `top`; returns where the next begins.
double skein_bar(Svg& svg, double top, const Axis& axis, std::size_t skein, const std::string& name,
                 const Split& s, const SplitAsked& asked, const Question& q) {
    svg.text({bar_left, top + 12}, name, "label strong");
    const double bar = top + 36;
    double start = bar_left;
    const auto parts = parts_of(skein, s, asked, q);
    for (const auto& part : parts) {
        const double wide = axis.at(in_metres(part.length)) - bar_left;
        share(svg, {start, bar}, wide, bar_height, part.look);
        if (wide > room_for_letter)
            svg.text({start + wide / 2, bar - 6}, part.letter, "label strong middle");
        start += wide;
        if (part.cut) cut_mark(svg, start, bar);
    }
    return svg.lines({bar_left, bar + bar_height + 17},
                     skein_words(parts, q.yarn.skeins[skein], q.units), longest_line, "label") -
           2;
}

double key_rows(Svg& svg, double y, const Split& s, const SplitAsked& asked, bool left_over) {
    const auto row = [&](const std::string& look, const std::string& words) {
        share(svg, {bar_left, y - 10}, 22, 11, look);
        svg.text({bar_left + 30, y}, words, "label");
        y += key_line + 3;
    };
    for (std::size_t w = 0; w < s.parts.size(); ++w)
        if (s.parts[w].made)
            row(look_of(asked.request.wishes[w]),
                fmt::format("{}: {}", letter_of(s, w),
                            shortened(asked.request.wishes[w].name, 36)));
    if (s.placed.list.reserve) row("reserve", "~: reserve for mending");
    if (left_over) row("share-left", "left over");
    return y;
}

double draw_split(Svg& svg, const Split& s, const SplitAsked& asked, const Question& q) {
    const auto drawn = std::min(q.yarn.skeins.size(), most_skeins_drawn);
    Axis axis{.from = 0, .to = 0, .start = bar_left, .stop = bar_right};
    std::vector<std::string> names;
    bool left_over = false;
    for (std::size_t i = 0; i < q.yarn.skeins.size(); ++i) {
        axis.to = std::max(axis.to, in_metres(q.yarn.skeins[i].length));
        names.push_back(q.yarn.skeins[i].name);
        left_over = left_over || left_in(i, s, q) > all_of_it;
    }
    names = short_names(names, longest_name_above_bar);
    double y = 4;
    for (std::size_t i = 0; i < drawn; ++i) y = skein_bar(svg, y, axis, i, names[i], s, asked, q);
    y = key_rows(svg, y + key_line, s, asked, left_over);
    if (drawn < q.yarn.skeins.size()) {
        svg.text({bar_left, y}, fmt::format("and {} more skeins", q.yarn.skeins.size() - drawn),
                 "faint");
        y += key_line;
    }
    return y;
}

std::string spoken(const Split& s, const SplitAsked& asked, const Question& q) {
    std::string out;
    for (const auto& cut : s.cuts)
        out += fmt::format("{}{}", out.empty() ? "" : ". ", capital(cut_words(cut, asked, q)));
    return out + ".";
}

}  // namespace

Svg split_chart(const Split& s, const SplitAsked& asked, const Question& q) {
    Svg measured(chart_width, 0, "", "");  // drawn once to learn its height
    const double height = draw_split(measured, s, asked, q);
    Svg svg(chart_width, height, "What comes off which skein", spoken(s, asked, q));
    draw_split(svg, s, asked, q);
    return svg;
}

Svg split_picture(const Split& s, const SplitAsked& asked, const Question& q) {
    const auto chart = split_chart(s, asked, q);
    const auto& name = q.measured.batch.name;
    const auto title = (name.empty() ? "Your batch" : shortened(inert(name), 34)) + ": the split";
    Svg out(chart_width, chart.height() + 46, title, spoken(s, asked, q));
    return out.text({12, 26}, title, "head").place(chart, {0, 40});
}

}  // namespace gristwright::cli
