// The columns of the catalogue's tables, each list once: the image is written and read by them, in
// this order. What is a table within a row (the pieces of a template) has its own columns.
#pragma once

#include <concepts>
#include <type_traits>

#include "catalog/reference/catalogue.hpp"

namespace gristwright::catalog {

// A row to be read or one to be written.
template <class Row, class Type>
concept RowOf = std::same_as<std::remove_const_t<Row>, Type>;

void columns(RowOf<WeightClass> auto& r, auto&& at) {
    at(r.number, r.name, r.stitches_4in_low, r.stitches_4in_high, r.needle_mm_low, r.needle_mm_high,
       r.wpi_low, r.wpi_high, r.yd_per_lb_low, r.yd_per_lb_high, r.source);
}

void columns(RowOf<WoolGrade> auto& r, auto&& at) {
    at(r.blood, r.count, r.low, r.high, r.most_deviation, r.source);
}

void columns(RowOf<TraitRow> auto& r, auto&& at) {
    at(r.trait, r.driver, r.from, r.to, r.adds, r.more, r.less, r.mark, r.source);
}

void columns(RowOf<KnitFabric> auto& r, auto&& at) {
    at(r.name, r.metres, r.metres_low, r.metres_high, r.stitches, r.rows, r.growth, r.growth_low,
       r.growth_high, r.stitch_repeat, r.row_repeat, r.definition, r.openness, r.loose_loops,
       r.fulled, r.longest_strand, r.chart, r.colours, r.areas, r.built, r.mark, r.source);
}

void columns(RowOf<Weave> auto& r, auto&& at) {
    at(r.name, r.interlacing.threads, r.interlacing.intersections, r.sett, r.picks, r.warp_float,
       r.weft_float, r.shafts, r.take_up, r.gathers.mid, r.gathers.low, r.gathers.high,
       r.gathers_mark, r.gathers_source, r.most_in_hole, r.end_repeat, r.pick_repeat, r.definition,
       r.loose_loops, r.chart, r.colours, r.areas, r.built, r.mark, r.source);
}

void columns(RowOf<ArticleKind> auto& r, auto&& at) {
    at(r.name, r.worn, r.draped, r.long_round, r.on_feet, r.in_pairs);
}

void columns(RowOf<BodySize> auto& r, auto&& at) {
    at(r.who, r.measure, r.low, r.mid, r.high, r.mark, r.source);
}

void columns(RowOf<Level> auto& r, auto&& at) { at(r.low, r.high, r.mark); }

void columns(RowOf<FibrePart> auto& r, auto&& at) {
    at(r.name, r.kind, r.category, r.density, r.micron_low, r.micron_high, r.staple_low,
       r.staple_high, r.felting, r.mark, r.source, r.behaviour.levels);
}

void columns(RowOf<Demand> auto& r, auto&& at) {
    at(r.trait, r.enough, r.lacking, r.left, r.reason, r.remedy, r.mark, r.source);
}

void columns(RowOf<PieceRange> auto& r, auto&& at) { at(r.article, r.spread, r.mark, r.source); }

void columns(RowOf<Listed> auto& r, auto&& at) { at(r.words, r.none_of); }

void columns(RowOf<DemandFor> auto& r, auto&& at) {
    at(r.article, r.fabric, r.craft, r.touches, r.hard_fulled, r.firmness, r.for_baby, r.demand);
}

void columns(RowOf<SpunFor> auto& r, auto&& at) {
    at(r.article, r.touches, r.firmness, r.for_baby, r.place, r.alike, r.mark, r.source);
}

void columns(RowOf<OrdinaryYarn> auto& r, auto&& at) {
    at(r.fibre, r.preparation, r.draw, r.plies, r.metres_per_gram);
}

void columns(RowOf<Caution> auto& r, auto&& at) {
    at(r.when, r.text, r.brief, r.harm, r.mark, r.source);
}

void columns(RowOf<Outline> auto& r, auto&& at) { at(r.shape, r.width, r.length, r.narrow); }

void columns(RowOf<Following> auto& r, auto&& at) { at(r.width, r.length, r.narrow); }

void columns(RowOf<Counting> auto& r, auto&& at) {
    at(r.multiple, r.stitches_of, r.part, r.begins, r.by, r.every, r.doubles, r.steps, r.along,
       r.within, r.turns, r.gusset_of, r.underarm, r.in_rounds);
}

void columns(RowOf<PieceTemplate> auto& r, auto&& at) {
    at(r.name, r.fabric, r.outline, r.grows, r.count, r.yarn, r.of_warp, r.of_weft, r.unbroken,
       r.narrow_first, r.on_smaller, r.follows, r.counting);
}

void columns(RowOf<Wish> auto& r, auto&& at) { at(r.at_least, r.weight); }

// What it asks and how ordinary yarns serve it follows from the other tables; the levels of that
// are kept with it, as `Image` has them. It brings no fabrics, and its origin is this image.
void columns(RowOf<Template> auto& r, auto&& at) {
    at(r.name, r.title, r.article, r.about, r.craft, r.skill, r.touches, r.for_baby, r.sample,
       r.measure, r.smallest, r.ideal, r.largest, r.fitted, r.finest, r.thickest, r.firmness,
       r.spacing, r.finish, r.loom, r.fringe, r.hem, r.loom_waste, r.role, r.pieces, r.worked,
       r.wishes, r.steps, r.cautions);
}

// The templates stand behind it: what shares them is made of them all at once.
void columns(RowOf<Catalogue> auto& c, auto&& at) {
    at(c.yarn.classes, c.yarn.grades, c.yarn.traits, c.fabrics.knitted, c.fabrics.weaves, c.kinds,
       c.bodies, c.words, c.spoken.lists, c.fibres, c.cautions, c.needs, c.piece_ranges, c.spun_for,
       c.ordinary);
}

}  // namespace gristwright::catalog
