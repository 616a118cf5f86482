// A picture read back from its SVG by an XML reader that is not ours: what is drawn, where.
#pragma once

#include <string>
#include <vector>

#include "cli/output/svg.hpp"

namespace drawing {

using gristwright::cli::Point;

struct Text {
    std::string words, look;
    Point at;
};

struct Drawing {
    double width = 0, height = 0;
    std::string title, description;
    std::vector<Text> texts;
    std::vector<Point> points;  // corners, ends, places along curves; of everything but text
    std::vector<std::string> looks;

    bool says(const std::string& words) const;
    std::size_t count(const std::string& look) const;
};

// Throws for what is not well-formed XML, an element or a path that the writer does not know.
Drawing read(const std::string& svg);
inline Drawing read(const gristwright::cli::Svg& svg) { return read(svg.file()); }

// Places along a path's outline, from its "M1 2L3 4..." text: lines, cubic curves, circular arcs.
std::vector<Point> along(const std::string& path);
// The area that they surround.
double area(const std::vector<Point>& outline);
double distance(Point from, const std::vector<Point>& outline);

// What leaves the picture by more than half a unit; a text by where it begins or ends when each
// character is as narrow as can be (4 units, judgement). Empty: nothing.
std::vector<std::string> outside(const Drawing& drawn);

}  // namespace drawing
