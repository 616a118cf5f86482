// The tables of the image. Every number has its unit in its column's name.
#pragma once

namespace gristwright::catalog {

inline constexpr const char* image_schema = R"sql(
CREATE TABLE weight_class (
  number INTEGER NOT NULL, name TEXT NOT NULL,
  stitches_4in_low REAL, stitches_4in_high REAL, needle_mm_low REAL, needle_mm_high REAL,
  wpi_low REAL, wpi_high REAL, yd_per_lb_low REAL, yd_per_lb_high REAL,
  source TEXT NOT NULL) STRICT;
CREATE TABLE wool_grade (
  blood TEXT NOT NULL, count TEXT NOT NULL, low_m REAL NOT NULL, high_m REAL NOT NULL,
  most_deviation_m REAL NOT NULL, source TEXT NOT NULL) STRICT;
CREATE TABLE trait_row (
  trait INTEGER NOT NULL, driver INTEGER NOT NULL, starts REAL NOT NULL, ends REAL NOT NULL,
  adds REAL NOT NULL, more TEXT NOT NULL, less TEXT NOT NULL, mark INTEGER NOT NULL,
  source TEXT NOT NULL) STRICT;
CREATE TABLE knitted_fabric (
  name TEXT NOT NULL UNIQUE, metres REAL NOT NULL, metres_low REAL NOT NULL,
  metres_high REAL NOT NULL, stitches REAL NOT NULL, rows REAL NOT NULL, growth REAL NOT NULL,
  growth_low REAL NOT NULL, growth_high REAL NOT NULL, stitch_repeat INTEGER NOT NULL,
  row_repeat INTEGER NOT NULL, definition REAL NOT NULL, openness REAL NOT NULL,
  loose_loops INTEGER NOT NULL, mark INTEGER NOT NULL, source TEXT NOT NULL,
  chart TEXT NOT NULL, longest_strand INTEGER NOT NULL) STRICT;
CREATE TABLE weave (
  name TEXT NOT NULL UNIQUE, threads REAL NOT NULL, intersections REAL NOT NULL,
  sett REAL NOT NULL, picks REAL NOT NULL, warp_float INTEGER NOT NULL,
  weft_float INTEGER NOT NULL, shafts INTEGER NOT NULL, take_up REAL NOT NULL, most_in_hole INTEGER NOT NULL, end_repeat INTEGER NOT NULL,
  pick_repeat INTEGER NOT NULL, definition REAL NOT NULL, loose_loops INTEGER NOT NULL,
  mark INTEGER NOT NULL, source TEXT NOT NULL, chart TEXT NOT NULL) STRICT;
CREATE TABLE fibre (
  name TEXT NOT NULL UNIQUE, kind TEXT NOT NULL, category TEXT NOT NULL,
  density_kg_m3 REAL NOT NULL, micron_low_m REAL, micron_high_m REAL, staple_low_m REAL,
  staple_high_m REAL, felting TEXT NOT NULL, source TEXT NOT NULL) STRICT;
CREATE TABLE fibre_behaviour (
  fibre TEXT NOT NULL REFERENCES fibre (name), behaviour INTEGER NOT NULL, low REAL NOT NULL,
  high REAL NOT NULL, mark INTEGER NOT NULL) STRICT;
CREATE TABLE need (
  articles TEXT NOT NULL, fabrics TEXT NOT NULL, craft INTEGER, touches INTEGER,
  hard_fulled INTEGER, for_baby INTEGER, trait INTEGER, enough REAL NOT NULL,
  lacking REAL NOT NULL, kept REAL NOT NULL, reason TEXT NOT NULL, remedy TEXT NOT NULL,
  mark INTEGER NOT NULL, source TEXT NOT NULL) STRICT;
CREATE TABLE ordinary_yarn (
  fibre TEXT NOT NULL, preparation INTEGER NOT NULL, draw INTEGER NOT NULL,
  plies INTEGER NOT NULL, metres_per_gram REAL NOT NULL) STRICT;
CREATE TABLE standing (
  template TEXT NOT NULL REFERENCES template, levels TEXT NOT NULL) STRICT;
CREATE TABLE body_size (
  who TEXT NOT NULL, measure TEXT NOT NULL, low_m REAL NOT NULL, mid_m REAL NOT NULL,
  high_m REAL NOT NULL, mark INTEGER NOT NULL, source TEXT NOT NULL,
  PRIMARY KEY (who, measure)) STRICT;
CREATE TABLE words (packed TEXT NOT NULL) STRICT;
CREATE TABLE spoken (
  list TEXT NOT NULL, word TEXT NOT NULL, means TEXT NOT NULL, note TEXT NOT NULL,
  PRIMARY KEY (list, word)) STRICT;
CREATE TABLE caution (
  condition TEXT NOT NULL, text TEXT NOT NULL, brief TEXT NOT NULL, harm INTEGER NOT NULL,
  mark INTEGER NOT NULL, source TEXT NOT NULL) STRICT;
CREATE TABLE template (
  name TEXT NOT NULL PRIMARY KEY, title TEXT NOT NULL, article TEXT NOT NULL, about TEXT NOT NULL,
  craft INTEGER NOT NULL, skill INTEGER NOT NULL, touches INTEGER NOT NULL,
  for_baby INTEGER NOT NULL, sample INTEGER NOT NULL, measure TEXT NOT NULL, smallest_m REAL NOT NULL,
  ideal_m REAL NOT NULL, largest_m REAL NOT NULL, fitted INTEGER NOT NULL, finest INTEGER NOT NULL, thickest INTEGER NOT NULL, firmness INTEGER NOT NULL,
  spacing INTEGER NOT NULL, finish INTEGER NOT NULL, loom INTEGER NOT NULL, fringe_m REAL NOT NULL,
  hem_m REAL NOT NULL, loom_waste_m REAL NOT NULL, role INTEGER NOT NULL) STRICT;
CREATE TABLE piece (
  template TEXT NOT NULL REFERENCES template, place INTEGER NOT NULL, name TEXT NOT NULL,
  fabric TEXT NOT NULL, shape INTEGER NOT NULL, width_m REAL NOT NULL, length_m REAL NOT NULL,
  narrow_m REAL NOT NULL, grows INTEGER NOT NULL, alike INTEGER NOT NULL, yarn INTEGER NOT NULL,
  unbroken INTEGER NOT NULL, of_warp REAL NOT NULL, of_weft REAL NOT NULL,
  PRIMARY KEY (template, place)) STRICT;
CREATE TABLE wish (
  template TEXT NOT NULL REFERENCES template, asked INTEGER NOT NULL, at_least REAL NOT NULL,
  weight REAL NOT NULL, PRIMARY KEY (template, asked)) STRICT;
CREATE TABLE saying (
  template TEXT NOT NULL REFERENCES template, kind TEXT NOT NULL CHECK (kind IN ('step', 'caution')),
  place INTEGER NOT NULL, text TEXT NOT NULL, PRIMARY KEY (template, kind, place)) STRICT;
)sql";

}  // namespace gristwright::catalog
