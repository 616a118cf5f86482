#include "catalog/tables.hpp"

#include <array>
#include <charconv>

#include "catalog/bad_text.hpp"
#include "catalog/table_row.hpp"
#include "engine/lay/chart.hpp"
#include "engine/lay/draft.hpp"
#include "engine/lay/stitch.hpp"
#include "engine/units/failure.hpp"

namespace gristwright::catalog {
namespace {

WeightClass weight_class(const Row& row) {
    return {row.whole("number"),        row.text("name"),          row.maybe("st_per_4in_lo"),
            row.maybe("st_per_4in_hi"), row.maybe("needle_mm_lo"), row.maybe("needle_mm_hi"),
            row.maybe("wpi_lo"),        row.maybe("wpi_hi"),       row.maybe("yd_per_lb_lo"),
            row.maybe("yd_per_lb_hi"),  row.text("source")};
}

WoolGrade wool_grade_row(const Row& row) {
    return {row.text("blood"),
            row.text("count"),
            microns(row.number("micron_lo")),
            microns(row.number("micron_hi")),
            microns(row.number("max_sd_micron")),
            row.text("source")};
}

TraitRow trait_row(const Row& row) {
    TraitRow out;
    out.trait = row.word("trait", trait_named);
    out.driver = row.word("driver", driver_named);
    out.from = row.number("from");
    out.to = row.number("to");
    if (out.from == out.to) throw row.wrong("from and to must differ");
    out.adds = row.number("adds");
    out.more = row.text("more");
    out.less = row.text("less");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    return out;
}

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
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    out.chart = chart(row, lay::stitch_letters, out.stitch_repeat, out.row_repeat);
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

Weave weave(const Row& row) {
    Weave out;
    out.name = row.text("name");
    out.shafts = row.whole("shafts");
    out.sett = row.maybe("sett").value_or(0);
    out.picks = row.number("picks");
    out.take_up = row.number("take_up");
    out.most_in_hole = row.whole("most_in_hole");
    out.end_repeat = row.whole("end_repeat");
    out.pick_repeat = row.whole("pick_repeat");
    out.definition = row.number("definition");
    out.loose_loops = row.yes("loose_loops");
    out.mark = row.word("mark", mark_named);
    out.source = row.text("source");
    out.chart = chart(row, lay::weave_letters, out.end_repeat, out.pick_repeat);
    draw_in(row, out);
    if (out.sett < 0 || out.picks <= 0 || out.shafts < 2 || out.most_in_hole < 1 ||
        out.end_repeat < 1 || out.pick_repeat < 1)
        throw row.wrong("setts, picks and repeats must be positive, shafts at least 2");
    return out;
}

BodySize body_size_row(const Row& row) {
    BodySize out{row.text("who"),
                 row.text("measure"),
                 centimetres(row.number("low_cm")),
                 centimetres(row.number("mid_cm")),
                 centimetres(row.number("high_cm")),
                 row.word("mark", mark_named),
                 row.text("source")};
    if (body_named(out.who) != out.who) throw row.wrong("who: nobody is called so");
    if (!(Length{} < out.low && out.low <= out.mid && out.mid <= out.high))
        throw row.wrong("low, mid and high must rise");
    return out;
}

std::optional<WordMeaning::Kind> kind_named(std::string_view word) {
    using Kind = WordMeaning::Kind;
    if (word == "article") return Kind::article;
    if (word == "craft") return Kind::craft;
    if (word == "fabric") return Kind::fabric;
    if (word == "filler") return Kind::filler;
    return {};
}

// Empty is allowed on one side: no such fabric in that craft.
bool names_fabric(const WordMeaning& meaning, const Fabrics& fabrics) {
    if (meaning.means.empty() && meaning.on_loom.empty()) return false;
    return (meaning.means.empty() || fabrics.knitted_named(meaning.means)) &&
           (meaning.on_loom.empty() || fabrics.weave_named(meaning.on_loom));
}

// Densities from Morton and Hearle, Physical Properties of Textile Fibres (from memory).
Density density_of(const std::string& kind, const std::string& category) {
    if (kind == "silk") return grams_per_cm3(1.34);
    if (kind == "plant") return grams_per_cm3(category == "seed hair" ? 1.52 : 1.50);
    if (category == "regenerated cellulose") return grams_per_cm3(1.52);
    if (category == "synthetic") return grams_per_cm3(1.14);
    return grams_per_cm3(1.31);
}

// "0.62", or "0.35-0.89" where a group or disagreeing sources leave a range.
double level_end(const Row& row, std::string_view text) {
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc{} || read.ptr != text.data() + text.size() || value < 0 || value > 1)
        throw row.wrong(fmt::format("'{}' is no level from 0 to 1", text));
    return value;
}

std::optional<Level> level(const Row& row, Behaviour which) {
    const std::string column(words(which));
    const auto& text = row.text(column);
    if (text.empty()) return {};
    const auto dash = text.find('-');
    const auto low = level_end(row, std::string_view(text).substr(0, dash));
    const auto high =
        dash == std::string::npos ? low : level_end(row, std::string_view(text).substr(dash + 1));
    if (high < low) throw row.wrong(fmt::format("{}: '{}' runs downwards", column, text));
    return Level{low, high, row.word(column + "_mark", mark_named)};
}

FibrePart fibre(const Row& row) {
    FibrePart out;
    out.name = row.text("name");
    out.kind = row.text("kind");
    out.category = row.text("category");
    if (out.category == "silk") out.kind = "silk";
    const auto density = row.maybe("density");
    out.density = density ? grams_per_cm3(*density) : density_of(out.kind, out.category);
    for (std::size_t b = 0; b < behaviour_count; ++b)
        out.behaviour.levels[b] = level(row, static_cast<Behaviour>(b));
    const auto read = [&](std::string_view column, double unit) -> std::optional<Length> {
        const auto value = row.maybe(column);
        if (!value) return {};
        return metres(*value * unit);
    };
    out.micron_low = read("micron_lo", 1e-6);
    out.micron_high = read("micron_hi", 1e-6);
    out.staple_low = read("staple_lo_mm", 1e-3);
    out.staple_high = read("staple_hi_mm", 1e-3);
    out.felting = row.text("felting");
    out.source = row.text("source");
    const auto& how = row.text("how_known");
    if (how.find("from memory") != std::string::npos) out.source += " (from memory)";
    return out;
}

}  // namespace

std::optional<Mark> mark_named(std::string_view word) {
    if (word == "common practice") return Mark::common_practice;
    for (const auto mark : {Mark::read, Mark::derived, Mark::memory, Mark::judgement})
        if (words(mark) == word) return mark;
    return {};
}

std::vector<WeightClass> read_weight_classes(const std::string& text, const std::string& file) {
    return read_rows(text, file, weight_class);
}

std::vector<WoolGrade> read_wool_grades(const std::string& text, const std::string& file) {
    return read_rows(text, file, wool_grade_row);
}
std::vector<TraitRow> read_traits(const std::string& text, const std::string& file) {
    return read_rows(text, file, trait_row);
}
std::vector<KnitFabric> read_knitted_fabrics(const std::string& text, const std::string& file) {
    return read_rows(text, file, knitted_fabric);
}
std::vector<Weave> read_weaves(const std::string& text, const std::string& file) {
    return read_rows(text, file, weave);
}
std::vector<BodySize> read_body_sizes(const std::string& text, const std::string& file) {
    return read_rows(text, file, body_size_row);
}
Words read_words(const std::string& text, const std::string& file, const Fabrics& fabrics) {
    const auto csv = read_csv(text, file);
    Words out;
    for (const auto& line : csv.rows) {
        const Row row(csv, line, file);
        const WordMeaning meaning{row.word("kind", kind_named), row.text("means"),
                                  row.text("on_loom")};
        if (meaning.kind == WordMeaning::Kind::fabric && !names_fabric(meaning, fabrics))
            throw row.wrong("a fabric stands in the table of knitted fabrics or of weaves");
        if (!out.emplace(row.text("word"), meaning).second)
            throw row.wrong("this word stands twice");
    }
    return out;
}
std::vector<FibrePart> read_fibres(const std::string& text, const std::string& file) {
    return read_rows(text, file, fibre);
}

}  // namespace gristwright::catalog
