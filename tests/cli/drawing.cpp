#include "tests/cli/drawing.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <boost/property_tree/ptree.hpp>
#include <boost/property_tree/xml_parser.hpp>
#include <cmath>
#include <numbers>
#include <sstream>

#include "cli/output/layout.hpp"

namespace drawing {
namespace {

using boost::property_tree::ptree;

double number(const ptree& element, const char* name) {
    return element.get<double>(std::string("<xmlattr>.") + name, 0);
}

std::string word(const ptree& element, const char* name) {
    return element.get<std::string>(std::string("<xmlattr>.") + name, "");
}

class PathReader {
  public:
    explicit PathReader(const std::string& text) : in_(text) {}

    std::vector<Point> read() {
        char command = 0;
        while (in_ >> command) step(command);
        return std::move(out_);
    }

  private:
    double next() {
        double value = 0;
        if (!(in_ >> value)) throw std::runtime_error("a path without a number");
        return value;
    }
    Point point() {
        const double x = next();
        return {x, next()};
    }

    void step(char command) {
        if (command == 'M' || command == 'L')
            out_.push_back(point());
        else if (command == 'C')
            curve();
        else if (command == 'A')
            arc();
        else if (command != 'Z')
            throw std::runtime_error(fmt::format("a path with a '{}'", command));
    }

    void curve() {
        const auto a = out_.back(), b = point(), c = point(), d = point();
        for (int i = 1; i <= 60; ++i) {
            const double t = i / 60.0, u = 1 - t;
            const auto mix = [&](double p, double q, double r, double s) {
                return u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s;
            };
            out_.push_back({mix(a.x, b.x, c.x, d.x), mix(a.y, b.y, c.y, d.y)});
        }
    }

    // Of a circle; of the two centres the one that the flags choose.
    void arc() {
        const double radius = next();
        next(), next();  // the second radius and the turn, the same in a circle
        const bool large = next() != 0, clockwise = next() != 0;
        const auto a = out_.back(), b = point();
        const double chord = std::hypot(b.x - a.x, b.y - a.y);
        const double off = std::sqrt(std::max(0.0, radius * radius - chord * chord / 4));
        const double side = large == clockwise ? 1 : -1;
        const Point centre{(a.x + b.x) / 2 + side * off * (b.y - a.y) / chord,
                           (a.y + b.y) / 2 - side * off * (b.x - a.x) / chord};
        const double from = std::atan2(a.y - centre.y, a.x - centre.x);
        double turn = std::atan2(b.y - centre.y, b.x - centre.x) - from;
        if (clockwise && turn <= 0) turn += 2 * std::numbers::pi;
        if (!clockwise && turn >= 0) turn -= 2 * std::numbers::pi;
        for (int i = 1; i <= 120; ++i) {
            const double angle = from + turn * i / 120;
            out_.push_back(
                {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
        }
    }

    std::istringstream in_;
    std::vector<Point> out_;
};

class Reader {
  public:
    explicit Reader(Drawing& out) : out_(out) {}

    void read(const ptree& parent, Point corner) {
        for (const auto& [name, element] : parent)
            if (name != "<xmlattr>") one(name, element, corner);
    }

  private:
    void one(const std::string& name, const ptree& element, Point corner) {
        const Point at{corner.x + number(element, "x"), corner.y + number(element, "y")};
        const auto look = word(element, "class");
        if (!look.empty()) out_.looks.push_back(look);
        if (name == "title")
            out_.title = element.data();
        else if (name == "desc")
            out_.description = element.data();
        else if (name == "text")
            out_.texts.push_back({element.data(), look, at});
        else if (name == "rect" || name == "image")
            add(at, {at.x + number(element, "width"), at.y + number(element, "height")});
        else if (name == "circle")
            circle(element, corner);
        else if (name == "path")
            path(element, corner);
        else if (name == "svg")
            inner(element, at);
        else if (name != "style")
            throw std::runtime_error("an element <" + name + ">");
    }

    void add(Point a, Point b) { out_.points.insert(out_.points.end(), {a, b}); }

    void circle(const ptree& element, Point corner) {
        const double x = corner.x + number(element, "cx"), y = corner.y + number(element, "cy");
        const double r = number(element, "r");
        add({x - r, y - r}, {x + r, y + r});
    }

    void path(const ptree& element, Point corner) {
        for (const auto& p : along(word(element, "d")))
            out_.points.push_back({corner.x + p.x, corner.y + p.y});
    }

    // What is cut off at its edges counts by its edges.
    void inner(const ptree& element, Point at) {
        add(at, {at.x + number(element, "width"), at.y + number(element, "height")});
        read(element, at);
    }

    Drawing& out_;
};

double from_left(const Text& text) {
    const double wide = 4 * double(gristwright::cli::characters(text.words));
    if (text.look.find("end") != std::string::npos) return wide;
    return text.look.find("middle") != std::string::npos ? wide / 2 : 0;
}

}  // namespace

bool Drawing::says(const std::string& words) const {
    return std::any_of(texts.begin(), texts.end(), [&](const Text& t) { return t.words == words; });
}

std::size_t Drawing::count(const std::string& look) const {
    return static_cast<std::size_t>(std::count(looks.begin(), looks.end(), look));
}

Drawing read(const std::string& svg) {
    std::istringstream in(svg);
    ptree document;
    read_xml(in, document);
    const auto& root = document.get_child("svg");
    Drawing out;
    std::istringstream box(word(root, "viewBox"));
    double left = 1, top = 1;
    box >> left >> top >> out.width >> out.height;
    if (left != 0 || top != 0 || !box)
        throw std::runtime_error("a view box that does not begin at 0");
    Reader(out).read(root, {});
    return out;
}

std::vector<Point> along(const std::string& path) { return PathReader(path).read(); }

double area(const std::vector<Point>& outline) {
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const auto &a = outline[i], &b = outline[(i + 1) % outline.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return std::abs(twice) / 2;
}

double distance(Point from, const std::vector<Point>& outline) {
    double least = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const auto &a = outline[i], &b = outline[(i + 1) % outline.size()];
        const double x = b.x - a.x, y = b.y - a.y, square = x * x + y * y;
        const double along = square > 0 ? ((from.x - a.x) * x + (from.y - a.y) * y) / square : 0;
        const double t = std::clamp(along, 0.0, 1.0);
        least = std::min(least, std::hypot(from.x - a.x - t * x, from.y - a.y - t * y));
    }
    return least;
}

std::vector<std::string> outside(const Drawing& drawn) {
    constexpr double slack = 0.5;
    std::vector<std::string> out;
    const auto away = [&](double x, double y) {
        return x < -slack || y < -slack || x > drawn.width + slack || y > drawn.height + slack;
    };
    for (const auto& p : drawn.points)
        if (away(p.x, p.y)) out.push_back(fmt::format("{:.1f} {:.1f}", p.x, p.y));
    for (const auto& text : drawn.texts) {
        const double wide = 4 * double(gristwright::cli::characters(text.words));
        const double left = text.at.x - from_left(text);
        if (away(left, text.at.y) || away(left + wide, text.at.y)) out.push_back(text.words);
    }
    return out;
}

}  // namespace drawing
