// A small SVG writer: elements in the order they are drawn, looks by class names (picture.css),
// coordinates with two decimals, so that the same picture is the same text everywhere.
//
// Text from people goes through `escaped`, the only way into a picture.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/output/path.hpp"

namespace gristwright::cli {

// For text and attributes of HTML and XML: & < > " ' as entities; what could drive or hide
// (controls, bidi overrides) is replaced, as in `inert`.
std::string escaped(std::string_view text);

// At most `most` characters, the last one "…" where something was left out.
std::string shortened(std::string_view text, std::size_t most);

// Text broken into lines of at most `most` characters; a word that is longer stays whole.
std::vector<std::string> broken(std::string_view text, std::size_t most);

// A figure keeps what belongs to it on its line: "205 x 46 cm", "12 %".
std::string kept_together(std::string_view text);

class Svg {
  public:
    // Size in user units. A screen reader says `title` and `description` instead of the picture.
    Svg(double width, double height, std::string_view title, std::string_view description);

    Svg& line(Point a, Point b, std::string_view look);
    Svg& rect(Point corner, double width, double height, std::string_view look, double round = 0);
    // In a colour of its own, "#4a8c8c".
    Svg& fill(Point corner, double width, double height, std::string_view colour);
    Svg& circle(Point centre, double radius, std::string_view look);
    Svg& path(const Path& path, std::string_view look);
    // `look` may hold an anchor: "label middle", "label end".
    Svg& text(Point at, std::string_view text, std::string_view look);
    // Text broken into lines of at most `most` characters; returns where a next line would stand.
    double lines(Point at, std::string_view text, std::size_t most, std::string_view look);
    // A line as thick as said; with `gap` > 0 broken into marks `dash` long every dash + gap.
    Svg& stroke(const Path& path, std::string_view look, double thick, double dash = 0,
                double gap = 0);
    // Pixels, from data_address(), fitted to the box whose corner is at `at`.
    Svg& image(Point at, double width, double height, std::string_view address);
    // Another picture drawn inside this one, its corner at `at`; cut off at its
    // edges.
    Svg& place(const Svg& inner, Point at);

    double width() const { return width_; }
    double height() const { return height_; }

    // For an HTML page; `id` must be the page's only one of its kind, letters and digits.
    std::string inlined(std::string_view id) const;
    // The same, `units` of it to the size of a letter, so that a page can set the scale of many.
    std::string inlined(std::string_view id, double units) const;
    // For an HTML page where its words stand beside it: a screen reader passes it by.
    std::string silent() const;
    std::string silent(double units) const;
    // A file of its own, with its style and paper, a unit two pixels large.
    std::string file() const;
    // For paper: a unit is so many points, 72 to the inch.
    std::string poster(double points = 1) const;
    // For one side of A4 or Letter: a unit is a point, or less where that were too large.
    std::string one_side() const;

  private:
    std::string opening(std::string_view id, std::string_view more) const;
    std::string silent_as(std::string_view size) const;
    std::string file_as(std::string_view size) const;

    double width_, height_;
    std::string title_, description_, body_;
};

}  // namespace gristwright::cli
