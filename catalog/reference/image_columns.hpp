// The columns of the image's tables, each list once: the schema, writing and reading follow from
// it. A number's unit stands in its column's name.
#pragma once

#include <concepts>
#include <string>
#include <vector>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// Rows that are a type of their own only here.
struct PackedWords {
    std::string packed;
};
struct SpokenRow {
    std::string list, word;
    Spoken said;
};
struct LevelRow {
    std::string fibre;
    std::size_t behaviour = 0;
    Level level;
};
struct StandingRow {
    std::string article;
    std::vector<double> levels;
};
struct PieceRow {
    std::string article;
    int place = 0;
    PieceTemplate piece;
};
struct WishRow {
    std::string article;
    std::size_t asked = 0;
    Wish wish;
};
struct SayingRow {
    std::string article;
    bool step = false;  // else a caution
    int place = 0;
    std::string text;
};

struct Table {
    const char* name;
    const char* key;  // what makes a row unlike any other; empty: rows may be alike
};
template <class Row>
inline constexpr Table table{};
template <>
inline constexpr Table table<WeightClass>{"weight_class", "number"};
template <>
inline constexpr Table table<WoolGrade>{"wool_grade", ""};
template <>
inline constexpr Table table<TraitRow>{"trait_row", ""};
template <>
inline constexpr Table table<KnitFabric>{"knitted_fabric", "name"};
template <>
inline constexpr Table table<Weave>{"weave", "name"};
template <>
inline constexpr Table table<BodySize>{"body_size", "who, measure"};
template <>
inline constexpr Table table<PackedWords>{"words", ""};
template <>
inline constexpr Table table<SpokenRow>{"spoken", "list, word"};
template <>
inline constexpr Table table<FibrePart>{"fibre", "name"};
template <>
inline constexpr Table table<LevelRow>{"fibre_behaviour", "fibre, behaviour"};
template <>
inline constexpr Table table<DemandFor>{"need", ""};
template <>
inline constexpr Table table<OrdinaryYarn>{"ordinary_yarn", ""};
template <>
inline constexpr Table table<StandingRow>{"standing", "article"};
template <>
inline constexpr Table table<Caution>{"caution", ""};
template <>
inline constexpr Table table<Template>{"template", "name"};
template <>
inline constexpr Table table<PieceRow>{"piece", "article, place"};
template <>
inline constexpr Table table<WishRow>{"wish", "article, asked"};
template <>
inline constexpr Table table<SayingRow>{"saying", "article, step, place"};

// A row to be read or one to be written.
template <class Row, class Type>
concept RowOf = std::same_as<std::remove_const_t<Row>, Type>;

void columns(RowOf<WeightClass> auto& r, auto&& at) {
    at("number", r.number), at("name", r.name);
    at("stitches_4in_low", r.stitches_4in_low), at("stitches_4in_high", r.stitches_4in_high);
    at("needle_mm_low", r.needle_mm_low), at("needle_mm_high", r.needle_mm_high);
    at("wpi_low", r.wpi_low), at("wpi_high", r.wpi_high);
    at("yd_per_lb_low", r.yd_per_lb_low), at("yd_per_lb_high", r.yd_per_lb_high);
    at("source", r.source);
}

void columns(RowOf<WoolGrade> auto& r, auto&& at) {
    at("blood", r.blood), at("count", r.count), at("low_m", r.low), at("high_m", r.high);
    at("most_deviation_m", r.most_deviation), at("source", r.source);
}

void columns(RowOf<TraitRow> auto& r, auto&& at) {
    at("trait", r.trait), at("driver", r.driver), at("starts", r.from), at("ends", r.to);
    at("adds", r.adds), at("more", r.more), at("less", r.less);
    at("mark", r.mark), at("source", r.source);
}

void columns(RowOf<KnitFabric> auto& r, auto&& at) {
    at("name", r.name);
    at("metres", r.metres), at("metres_low", r.metres_low), at("metres_high", r.metres_high);
    at("stitches", r.stitches), at("rows", r.rows);
    at("growth", r.growth), at("growth_low", r.growth_low), at("growth_high", r.growth_high);
    at("stitch_repeat", r.stitch_repeat), at("row_repeat", r.row_repeat);
    at("definition", r.definition), at("openness", r.openness), at("loose_loops", r.loose_loops);
    at("longest_strand", r.longest_strand), at("chart", r.chart);
    at("mark", r.mark), at("source", r.source);
}

void columns(RowOf<Weave> auto& r, auto&& at) {
    at("name", r.name);
    at("threads", r.interlacing.threads), at("intersections", r.interlacing.intersections);
    at("sett", r.sett), at("picks", r.picks);
    at("warp_float", r.warp_float), at("weft_float", r.weft_float), at("shafts", r.shafts);
    at("take_up", r.take_up), at("most_in_hole", r.most_in_hole);
    at("end_repeat", r.end_repeat), at("pick_repeat", r.pick_repeat);
    at("definition", r.definition), at("loose_loops", r.loose_loops), at("chart", r.chart);
    at("mark", r.mark), at("source", r.source);
}

void columns(RowOf<BodySize> auto& r, auto&& at) {
    at("who", r.who), at("measure", r.measure);
    at("low_m", r.low), at("mid_m", r.mid), at("high_m", r.high);
    at("mark", r.mark), at("source", r.source);
}

void columns(RowOf<PackedWords> auto& r, auto&& at) { at("packed", r.packed); }

void columns(RowOf<SpokenRow> auto& r, auto&& at) {
    at("list", r.list), at("word", r.word), at("means", r.said.means), at("note", r.said.note);
}

void columns(RowOf<FibrePart> auto& r, auto&& at) {
    at("name", r.name), at("kind", r.kind), at("category", r.category);
    at("density_kg_m3", r.density);
    at("micron_low_m", r.micron_low), at("micron_high_m", r.micron_high);
    at("staple_low_m", r.staple_low), at("staple_high_m", r.staple_high);
    at("felting", r.felting), at("mark", r.mark), at("source", r.source);
}

void columns(RowOf<LevelRow> auto& r, auto&& at) {
    at("fibre", r.fibre), at("behaviour", r.behaviour);
    at("low", r.level.low), at("high", r.level.high), at("mark", r.level.mark);
}

void columns(RowOf<DemandFor> auto& r, auto&& at) {
    at("articles", r.article), at("fabrics", r.fabric);
    at("craft", r.craft), at("touches", r.touches);
    at("hard_fulled", r.hard_fulled), at("for_baby", r.for_baby);
    auto& d = r.demand;
    at("trait", d.trait), at("enough", d.enough), at("lacking", d.lacking), at("kept", d.left);
    at("reason", d.reason), at("remedy", d.remedy), at("mark", d.mark), at("source", d.source);
}

void columns(RowOf<OrdinaryYarn> auto& r, auto&& at) {
    at("fibre", r.fibre), at("preparation", r.preparation), at("draw", r.draw);
    at("plies", r.plies), at("metres_per_gram", r.metres_per_gram);
}

void columns(RowOf<StandingRow> auto& r, auto&& at) {
    at("article", r.article), at("levels", r.levels);
}

void columns(RowOf<Caution> auto& r, auto&& at) {
    at("condition", r.when), at("said", r.text), at("brief", r.brief), at("harm", r.harm);
    at("mark", r.mark), at("source", r.source);
}

void columns(RowOf<Template> auto& r, auto&& at) {
    at("name", r.name), at("title", r.title), at("article", r.article), at("about", r.about);
    at("craft", r.craft), at("skill", r.skill), at("touches", r.touches);
    at("for_baby", r.for_baby), at("sample", r.sample), at("measure", r.measure);
    at("smallest_m", r.smallest), at("ideal_m", r.ideal), at("largest_m", r.largest);
    at("fitted", r.fitted), at("finest", r.finest), at("thickest", r.thickest);
    at("firmness", r.firmness), at("spacing", r.spacing), at("finish", r.finish), at("loom", r.loom);
    at("fringe_m", r.fringe), at("hem_m", r.hem), at("loom_waste_m", r.loom_waste), at("role", r.role);
    at("pieces_in_order", r.order);
}

void columns(RowOf<PieceRow> auto& r, auto&& at) {
    auto& p = r.piece;
    at("article", r.article), at("place", r.place), at("name", p.name), at("fabric", p.fabric);
    at("shape", p.outline.shape), at("width_m", p.outline.width);
    at("length_m", p.outline.length), at("narrow_m", p.outline.narrow);
    at("grows", p.grows), at("alike", p.count), at("yarn", p.yarn), at("unbroken", p.unbroken);
    at("narrow_first", p.narrow_first);
    at("of_warp", p.of_warp), at("of_weft", p.of_weft);
}

void columns(RowOf<WishRow> auto& r, auto&& at) {
    at("article", r.article), at("asked", r.asked);
    at("at_least", r.wish.at_least), at("weight", r.wish.weight);
}

void columns(RowOf<SayingRow> auto& r, auto&& at) {
    at("article", r.article), at("step", r.step), at("place", r.place), at("said", r.text);
}

}  // namespace gristwright::catalog
