#include "engine/lay/laid.hpp"

#include <algorithm>

#include "engine/lay/constants.hpp"
#include "engine/lay/slanted_blocks.hpp"
#include "engine/lay/woven.hpp"

namespace gristwright::lay {
namespace {

Chart stitches_of(const KnitFabric& fabric) {
    return read_chart(fabric.chart.empty() ? "k" : fabric.chart, stitch_letters);
}

Chart crossings_of(const Weave& weave) {
    return read_chart(weave.chart.empty() ? "x-/-x" : weave.chart, weave_letters);
}

std::optional<Chart> areas_of(const std::string& text, std::string_view letters) {
    if (text.empty()) return {};
    return read_chart(text, letters);
}

ColourOrder colours_of(const KnitFabric& fabric) {
    auto out = read_rows_of_colour(fabric.colours);
    out.areas = areas_of(fabric.areas, stitch_areas);
    return out;
}

ColourOrder colours_of(const Weave& weave) {
    auto out = read_threads_of_colour(weave.colours);
    out.areas = areas_of(weave.areas, weft_areas);
    return out;
}

// Where one side shows the first yarn the other shows the second.
ColourOrder other_side(ColourOrder colours) {
    if (colours.areas)
        for (auto& row : colours.areas->rows)
            for (char& yarn : row) yarn = yarn == '1' ? '2' : '1';
    return colours;
}

// Back to back, each with its knit face outwards.
std::vector<Strand> two_layers(const Chart& chart, Spacing s, const ColourOrder& colours,
                               double width, double height) {
    s.loop /= 2;
    auto out = knitted(chart, s, width, height, colours);
    for (auto& strand : knitted(chart, s, width, height, other_side(colours))) {
        for (auto& p : strand.line) p.z = -p.z - constants::knit_layers_part * s.thickness;
        out.push_back(std::move(strand));
    }
    return out;
}

}  // namespace

std::vector<Strand> laid(const KnitFabric& fabric, const Spacing& s, double width, double height) {
    const auto chart = stitches_of(fabric);
    if (fabric.built == KnitBuild::slanted_blocks)
        return slanted_blocks(chart, s, fabric.stitch_repeat / 2, width, height);
    const auto colours = colours_of(fabric);
    if (fabric.built == KnitBuild::two_layers) return two_layers(chart, s, colours, width, height);
    return knitted(chart, s, width, height, colours);
}

std::vector<Strand> laid(const Weave& weave, const WebSpacing& s, double width, double height) {
    return woven(crossings_of(weave), s.end, s.pick, s.thickness, width, height, colours_of(weave),
                 weave.built);
}

bool of_two_yarns(const KnitFabric& fabric) {
    return !fabric.colours.empty() || !fabric.areas.empty() || fabric.longest_strand > 0;
}

bool of_two_yarns(const Weave& weave) { return !weave.colours.empty() || !weave.areas.empty(); }

int repeat_across(const KnitFabric& fabric) {
    if (fabric.built == KnitBuild::slanted_blocks) return fabric.stitch_repeat;
    const auto areas = colours_of(fabric).areas;
    return std::max(stitches_of(fabric).across(), areas ? areas->across() : 0);
}

int repeat_across(const Weave& weave) {
    const auto colours = colours_of(weave);
    return std::max({crossings_of(weave).across(), static_cast<int>(colours.along.size()),
                     colours.areas ? colours.areas->across() : 0});
}

std::vector<Strand> corner_turned(const std::vector<Strand>& strands, double width, double height,
                                  double half) {
    const double fold = width + height - constants::corner_folded * std::min(width, height);
    std::vector<Strand> out;
    for (const auto& strand : strands) {
        bool cut = true;
        for (const auto& p : strand.line) {
            const bool turned = p.x + p.y > fold, gone = turned && (p.x > width || p.y > height);
            if (!gone && cut) out.push_back({{}, strand.yarn});
            cut = gone;
            if (gone) continue;
            out.back().line.push_back(turned ? Spot{fold - p.y, fold - p.x, 2 * half - p.z} : p);
        }
    }
    return out;
}

}  // namespace gristwright::lay
