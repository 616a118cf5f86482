#include "cli/output/split_picture.hpp"

#include <fmt/core.h>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/split_words.hpp"

namespace gristwright::cli {
namespace {

using allocation::Split;

constexpr double bar_left = 82, bar_right = chart_width - 14, bar_height = 12, row_height = 48;
constexpr std::size_t most_skeins = 24, looks = 5;
constexpr double room_for_letter = 9, room_for_metres = 38;

struct Part {
    Length length;
    std::string letter, look;
    bool cut = false;  // wound off here
};

std::string look_of(std::size_t wish) { return fmt::format("part{}", wish % looks); }

std::vector<Part> parts_of(std::size_t skein, const Split& s, const Question& q) {
    std::vector<Part> out;
    for (const auto& cut : s.cuts)
        if (cut.skein == skein)
            out.push_back({cut.length, std::string(1, letter_of(s, cut.wish)), look_of(cut.wish),
                           cut.ball_length > all_of_it});
    if (s.placed.list.reserve == skein)
        out.push_back({centimetres(static_cast<double>(s.problem.reserve)), "~", "reserve", false});
    const auto left = left_in(skein, s, q);
    if (left > all_of_it) out.push_back({left, "", "band", false});
    return out;
}

// Where the knife goes: across the bar, with a notch above it.
void cut_mark(Svg& svg, double x, double top) {
    svg.line({x, top - 5}, {x, top + bar_height + 4}, "cut");
    svg.path(Path().move({x - 4, top - 9}).line({x, top - 3}).line({x + 4, top - 9}).close(),
             "notch");
}

void skein_bar(Svg& svg, double top, const Axis& axis, std::size_t skein, const Split& s,
               const Question& q) {
    svg.text({bar_left - 6, top + 10}, shortened(inert(q.yarn.skeins[skein].name), 11),
             "label end");
    double start = bar_left;
    for (const auto& part : parts_of(skein, s, q)) {
        const double wide = axis.at(in_metres(part.length)) - bar_left, middle = start + wide / 2;
        svg.rect({start, top}, wide, bar_height, part.look);
        if (wide > room_for_letter) svg.text({middle, top - 5}, part.letter, "label strong middle");
        if (wide > room_for_metres)
            svg.text({middle, top + bar_height + 14}, q.units.yarn(part.length), "faint middle");
        start += wide;
        if (part.cut) cut_mark(svg, start, top);
    }
}

double key_rows(Svg& svg, double y, const Split& s, const SplitAsked& asked) {
    const auto row = [&](const std::string& look, const std::string& words) {
        svg.rect({12, y - 9}, 18, 10, look).text({38, y}, words, "label");
        y += 18;
    };
    for (std::size_t w = 0; w < s.parts.size(); ++w)
        if (s.parts[w].made)
            row(look_of(w), fmt::format("{}: {}", letter_of(s, w),
                                        shortened(asked.request.wishes[w].name, 44)));
    if (s.placed.list.reserve) row("reserve", "~: reserve for mending");
    row("band", "left over");
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
    const auto drawn = std::min(q.yarn.skeins.size(), most_skeins);
    std::size_t keys = s.placed.list.reserve ? 2 : 1;
    for (const auto& part : s.parts) keys += part.made ? 1 : 0;
    const double first = 22, bottom = first + row_height * double(drawn);
    Svg svg(chart_width, bottom + 18 * double(keys) + 22, "What comes off which skein",
            spoken(s, asked, q));
    Axis axis{.from = 0, .to = 0, .start = bar_left, .stop = bar_right};
    for (const auto& skein : q.yarn.skeins) axis.to = std::max(axis.to, in_metres(skein.length));
    for (std::size_t i = 0; i < drawn; ++i)
        skein_bar(svg, first + row_height * double(i), axis, i, s, q);
    const double y = key_rows(svg, bottom + 12, s, asked);
    if (drawn < q.yarn.skeins.size())
        svg.text({12, y}, fmt::format("and {} more skeins", q.yarn.skeins.size() - drawn), "faint");
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
