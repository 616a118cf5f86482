// The tables of stitches and of weaves, with what their charts tell.
#include <algorithm>

#include "catalog/reference/tables.hpp"
#include "catalog/text/table_row.hpp"
#include "engine/lay/chart.hpp"
#include "engine/lay/colour_order.hpp"
#include "engine/lay/draft.hpp"
#include "engine/lay/stitch.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

// A whole number of charts makes a repeat; empty: there is none.
std::string chart(const Row& row, std::string_view letters, int across, int up) {
    const auto& text = row.text("chart");
    if (text.empty()) return text;
    try {
        const auto read = lay::read_chart(text, letters);
        if (across % read.across() == 0 && up % read.up() == 0) return text;
    } catch (const Refused& wrong) {
        throw row.wrong(wrong.what());
    }
    throw row.wrong("a whole number of charts must make a repeat");
}

// Checked; empty: the cloth is of one yarn.
std::string colours(const Row& row, lay::ColourOrder (*read)(std::string_view)) {
    const auto& text = row.text("colours");
    try {
        (void)read(text);
    } catch (const Refused& wrong) {
        throw row.wrong(wrong.what());
    }
    return text;
}

// Checked; empty: it has no areas of colour.
std::string areas(const Row& row, std::string_view letters) {
    const auto& text = row.text("areas");
    try {
        if (!text.empty()) (void)lay::read_chart(text, letters);
    } catch (const Refused& wrong) {
        throw row.wrong(wrong.what());
    }
    return text;
}

std::optional<KnitBuild> knit_build(std::string_view word) {
    if (word.empty()) return KnitBuild::one_layer;
    if (word == "two layers") return KnitBuild::two_layers;
    if (word == "slanted blocks") return KnitBuild::slanted_blocks;
    return {};
}

std::optional<WeaveBuild> weave_build(std::string_view word) {
    if (word.empty()) return WeaveBuild::single_threads;
    if (word == "crossed ends") return WeaveBuild::crossed_ends;
    if (word == "clasped picks") return WeaveBuild::clasped_picks;
    return {};
}

// The metres stand in the row, or follow from its chart.
double metres_of(const Row& row, const KnitFabric& fabric) {
    if (const auto typed = row.maybe("metres")) return *typed;
    if (fabric.chart.empty()) throw row.wrong("metres: a number is missing, or a chart");
    return lay::metres_by_chart(lay::read_chart(fabric.chart, lay::stitch_letters), fabric.stitches,
                                fabric.rows);
}

KnitFabric knitted_fabric(const Row& row) {
    KnitFabric out;
    out.name = row.text("name");
    out.metres_low = row.number("metres_low");
    out.metres_high = row.number("metres_high");
    out.stitches = row.number("stitches");
    out.rows = row.number("rows");
    out.growth = row.number("growth");
    out.growth_low = row.number("growth_low");
    out.growth_high = row.number("growth_high");
    out.stitch_repeat = row.whole("stitch_repeat");
    out.row_repeat = row.whole("row_repeat");
    out.definition = row.number("definition");
    out.openness = row.number("openness");
    out.loose_loops = row.yes("loose_loops");
    out.fulled = row.yes("fulled");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    out.chart = chart(row, lay::stitch_letters, out.stitch_repeat, out.row_repeat);
    out.colours = colours(row, lay::read_rows_of_colour);
    out.areas = areas(row, lay::stitch_areas);
    out.built = row.word("built", knit_build);
    out.metres = metres_of(row, out);
    if (!out.chart.empty())
        out.longest_strand = lay::longest_strand(lay::read_chart(out.chart, lay::stitch_letters));
    const auto inside = [](double low, double mid, double high) {
        return 0 < low && low <= mid && mid <= high;
    };
    if (!inside(out.metres_low, out.metres, out.metres_high) ||
        !inside(out.growth_low, out.growth, out.growth_high) || out.stitches <= 0 ||
        out.rows <= 0 || out.stitch_repeat < 1 || out.row_repeat < 1)
        throw row.wrong("each range must hold its value, and factors and repeats be positive");
    return out;
}

// What the chart tells of the weave.
void draw_in(const Row& row, Weave& out) {
    if (out.chart.empty()) throw row.wrong("a weave needs its chart");
    try {
        const auto draft = lay::draft_of(lay::read_chart(out.chart, lay::weave_letters));
        out.interlacing = {static_cast<double>(draft.threads), draft.intersections};
        out.warp_float = draft.warp_float;
        out.weft_float = draft.weft_float;
        if (out.shafts > std::max(2, draft.shafts))
            throw row.wrong("shafts: its ends rise in fewer ways than that");
    } catch (const Refused& wrong) {
        throw row.wrong(wrong.what());
    }
}

// What the weave itself draws up in washing; most draw up nothing.
void gathering(const Row& row, Weave& out) {
    const auto share = row.maybe("gathers");
    if (!share) return;
    out.gathers = {*share, row.number("gathers_low"), row.number("gathers_high")};
    out.gathers_mark = row.word("gathers_mark", mark_named);
    out.gathers_source = row.text("gathers_source");
    const auto& g = out.gathers;
    if (!(0 <= g.low && g.low <= g.mid && g.mid <= g.high && g.high < 1))
        throw row.wrong("gathers: a share from 0 to 1, within its range");
}

Weave weave(const Row& row) {
    Weave out;
    out.name = row.text("name");
    out.shafts = row.whole("shafts");
    out.sett = row.maybe("sett").value_or(0);
    out.picks = row.number("picks");
    out.take_up = row.number("take_up");
    gathering(row, out);
    out.most_in_hole = row.whole("most_in_hole");
    out.end_repeat = row.whole("end_repeat");
    out.pick_repeat = row.whole("pick_repeat");
    out.definition = row.number("definition");
    out.loose_loops = row.yes("loose_loops");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    out.chart = chart(row, lay::weave_letters, out.end_repeat, out.pick_repeat);
    out.colours = colours(row, lay::read_threads_of_colour);
    out.areas = areas(row, lay::weft_areas);
    out.built = row.word("built", weave_build);
    draw_in(row, out);
    if (out.sett < 0 || out.picks <= 0 || out.shafts < 2 || out.most_in_hole < 1 ||
        out.end_repeat < 1 || out.pick_repeat < 1)
        throw row.wrong("setts, picks and repeats must be positive, shafts at least 2");
    return out;
}

}  // namespace

std::vector<KnitFabric> read_knitted_fabrics(const std::string& text, const std::string& file) {
    return read_rows(text, file, knitted_fabric, {"name"});
}
std::vector<Weave> read_weaves(const std::string& text, const std::string& file) {
    return read_rows(text, file, weave, {"name"});
}

}  // namespace gristwright::catalog
