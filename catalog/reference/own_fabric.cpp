#include "catalog/reference/own_fabric.hpp"

#include <algorithm>
#include <stdexcept>

#include "engine/lay/constants.hpp"
#include "engine/lay/draft.hpp"
#include "engine/lay/stitch.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

using namespace constants;

constexpr int long_run = 4;  // stitches or threads passed at once that small fingers catch in

lay::Chart chart_of(TomlTable& from, std::string_view letters) {
    try {
        return lay::read_chart(from.text("chart"), letters);
    } catch (const Refused& error) {
        throw from.wrong("chart", error.what());
    }
}

double share(const lay::Chart& chart, bool (*is)(char)) {
    double n = 0;
    for (const auto& row : chart.rows)
        n += static_cast<double>(std::count_if(row.begin(), row.end(), is));
    return n / (chart.across() * chart.up());
}

double definition_asked(const lay::Chart& chart) {
    if (share(chart, lay::crosses) > 0) return definition_of_crossings;
    const double purls = share(chart, lay::purled);
    return purls > 0 && purls < 1 ? double{definition_of_texture} : double{definition_of_plain};
}

void open_up(const lay::Chart& chart, KnitFabric& out) {
    const double overs = share(chart, [](char stitch) { return stitch == 'o'; });
    const double dropped = share(chart, [](char stitch) { return stitch == 'x' || stitch == 'e'; });
    if (overs > 0) out.growth = least_lace_growth + growth_per_over * overs;
    out.growth_low = 1 + (out.growth - 1) * 0.5;
    out.growth_high = 1 + (out.growth - 1) * 1.5;
    out.openness = std::min(1.0, 4 * (overs + dropped));
    out.loose_loops = overs + dropped > 0 || out.longest_strand >= long_run;
}

}  // namespace

KnitFabric read_own_stitch(TomlTable from) {
    KnitFabric out;
    out.name = from.text("name");
    const auto chart = chart_of(from, lay::stitch_letters);
    out.chart = from.text("chart");
    if (from.has("gauge")) {
        const auto gauge = from.numbers("gauge", 2);
        out.stitches = gauge[0];
        out.rows = gauge[1];
        if (!(out.stitches > 0.2 && out.stitches < 5 && out.rows > 0.2 && out.rows < 5))
            throw from.wrong("gauge", "stitches and rows against stocking stitch, 0.2 to 5");
    }
    out.stitch_repeat = chart.across();
    out.row_repeat = chart.up();
    out.metres = lay::metres_by_chart(chart, out.stitches, out.rows);
    out.metres_low = out.metres * (1 - own_chart_margin);
    out.metres_high = out.metres * (1 + own_chart_margin);
    out.longest_strand = lay::longest_strand(chart);
    out.definition = definition_asked(chart);
    out.source = "its own chart";
    open_up(chart, out);
    from.nothing_else();
    return out;
}

Weave read_own_weave(TomlTable from) {
    Weave out;
    out.name = from.text("name");
    const auto chart = chart_of(from, lay::weave_letters);
    out.chart = from.text("chart");
    try {
        const auto draft = lay::draft_of(chart);
        out.interlacing = {static_cast<double>(draft.threads), draft.intersections};
        out.warp_float = draft.warp_float;
        out.weft_float = draft.weft_float;
        out.shafts = std::max(2, draft.shafts);
        out.take_up = draft.intersections / draft.threads;  // plain weave crosses at every thread
    } catch (const Refused& error) {
        throw from.wrong("chart", error.what());
    }
    out.end_repeat = chart.across();
    out.pick_repeat = chart.up();
    out.loose_loops = std::max(out.warp_float, out.weft_float) >= long_run;
    out.source = "its own draft";
    from.nothing_else();
    return out;
}

}  // namespace gristwright::catalog
