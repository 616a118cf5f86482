// Lines and outlines of a picture, and where they stand when they are moved, turned and scaled.
#pragma once

#include <string>
#include <vector>

namespace gristwright::cli {

struct Point {
    double x = 0, y = 0;
};

using Line = std::vector<Point>;

// Mirrored left to right, then turned clockwise (radians), then enlarged, then shifted.
struct Pose {
    Point shift{};
    double turn = 0, scale = 1;
    bool mirrored = false;

    Point at(Point p) const;
    Line at(const Line& line) const;
};

struct Bounds {
    Point low{1e9, 1e9}, high{-1e9, -1e9};

    double width() const { return high.x - low.x; }
    double height() const { return high.y - low.y; }
    void hold(const Line& line);
};

// The outline or line of a path, kept as SVG writes it and as places along it.
class Path {
  public:
    Path& move(Point to);
    Path& line(Point to);
    Path& curve(Point c1, Point c2, Point to);
    Path& arc(double radius, Point to, bool clockwise, bool large = false);
    Path& close();
    const std::string& text() const { return text_; }
    // Curves and arcs in short straight steps.
    const Line& along() const { return along_; }

  private:
    std::string text_;
    Line along_;
};

Path path_of(const Line& line, bool closed);

// "12.5", "3", "-0.25": two decimals, no zeros at the end, never "-0". Not finite: "0".
std::string decimal(double value);
// "12.5 3"
std::string coordinates(Point p);

}  // namespace gristwright::cli
