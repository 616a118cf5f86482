// A template: an article that can be made in a range of sizes. Data, not code: one TOML file each
// in catalog/templates/ (format in docs/templates.md).
#pragma once

#include <string>
#include <vector>

#include "engine/cloth/knitting.hpp"
#include "engine/cloth/weaving.hpp"

namespace gristwright {

enum class Craft { knitted, woven };

// Outline of a piece. Its size is (width, length) in finished cloth:
//   rectangle, tube (width = circumference), triangle_top_down (width = span, depth = span / 2),
//   triangle_bias (right-angled, legs of `length`), half_circle (width = diameter), crescent (width
//   = span; area 0.30 span^2, judgement), square (side = width), square_from_corner, circle (width
//   = diameter), cap (a hat: tube plus crown; width = circumference, length = height).
enum class Shape {
    rectangle,
    tube,
    triangle_top_down,
    triangle_bias,
    half_circle,
    crescent,
    square,
    square_from_corner,
    circle,
    cap
};

struct PieceTemplate {
    std::string name;  // "body", "border", "mitt"
    Shape shape = Shape::rectangle;
    int count = 1;         // how many alike
    std::string fabric;    // knit fabric or weave by its table name
    Length width, length;  // at scale 1; length 0 where the shape derives it
    bool width_scales = true, length_scales = true;  // does the size factor stretch it?
    int yarn = 1;           // 1: main; 2: a second yarn that is not drawn from this batch
    bool unbroken = false;  // wants one unbroken length
};

// What a template asks of the yarn: wanted level 0..1 of each trait and how much it matters 0..1.
struct Wish {
    double at_least = 0, weight = 0;
};
struct Wishes {
    Wish definition, drape, softness, wear, warmth, elasticity, warp_fitness, consistency;
};

struct Template {
    std::string name;     // file name without .toml: "half-circle-shawl"
    std::string title;    // "Half-circle shawl"
    std::string article;  // kind shared by knitted and woven: "shawl", "scarf", ...
    Craft craft = Craft::knitted;
    std::string size_name;  // what the size measures: "span", "length", "circumference"
    // Size factors relative to the pieces' size: smallest useful < ideal <= largest sensible.
    double smallest = 0.5, ideal = 1, largest = 1.5;
    Length size_at_one;                      // the named measure at factor 1
    std::vector<PieceTemplate> pieces;       // at least one
    Firmness firmness = Firmness::ordinary;  // knitted
    Spacing spacing = Spacing::general;      // woven
    Finish finish = Finish::light;           // woven
    Length fringe, hem;                      // woven: each end
    Wishes wishes;
    std::string touches;  // "skin", "over clothes", "none"
    std::string skill;    // "first project", "some practice", "experienced"
    std::vector<std::string> steps, cautions;
    bool for_baby = false;
    std::string origin;  // "built in" or the file it came from
};

}  // namespace gristwright
