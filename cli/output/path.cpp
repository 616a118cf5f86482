#include "cli/output/path.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gristwright::cli {
namespace {

constexpr int steps = 16;  // of a curve or an arc

// The centre of the circle through both ends that the arc's two flags choose.
Point centre_of(Point a, Point b, double radius, bool clockwise, bool large) {
    const double chord = std::max(1e-9, std::hypot(b.x - a.x, b.y - a.y));
    const double off = std::sqrt(std::max(0.0, radius * radius - chord * chord / 4));
    const double side = large == clockwise ? 1 : -1;
    return {(a.x + b.x) / 2 + side * off * (b.y - a.y) / chord,
            (a.y + b.y) / 2 - side * off * (b.x - a.x) / chord};
}

}  // namespace

Point Pose::at(Point p) const {
    const double x = mirrored ? -p.x : p.x;
    return {shift.x + scale * (x * std::cos(turn) - p.y * std::sin(turn)),
            shift.y + scale * (x * std::sin(turn) + p.y * std::cos(turn))};
}

Line Pose::at(const Line& line) const {
    Line out;
    for (const auto& p : line) out.push_back(at(p));
    return out;
}

void Bounds::hold(const Line& line) {
    for (const auto& p : line) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
}

std::string coordinates(Point p) { return decimal(p.x) + " " + decimal(p.y); }

std::string decimal(double value) {
    if (!std::isfinite(value)) return "0";
    auto text = fmt::format("{:.2f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

Path& Path::move(Point to) {
    along_.push_back(to);
    return text_ += "M" + coordinates(to), *this;
}

Path& Path::line(Point to) {
    along_.push_back(to);
    return text_ += "L" + coordinates(to), *this;
}

Path& Path::close() { return text_ += "Z", *this; }

Path& Path::curve(Point c1, Point c2, Point to) {
    const auto from = along_.back();
    for (int i = 1; i <= steps; ++i) {
        const double t = double(i) / steps, u = 1 - t;
        const auto mix = [&](double a, double b, double c, double d) {
            return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
        };
        along_.push_back({mix(from.x, c1.x, c2.x, to.x), mix(from.y, c1.y, c2.y, to.y)});
    }
    return text_ += "C" + coordinates(c1) + " " + coordinates(c2) + " " + coordinates(to), *this;
}

Path& Path::arc(double radius, Point to, bool clockwise, bool large) {
    const auto from = along_.back(), centre = centre_of(from, to, radius, clockwise, large);
    const double begin = std::atan2(from.y - centre.y, from.x - centre.x);
    double turn = std::atan2(to.y - centre.y, to.x - centre.x) - begin;
    if (clockwise && turn <= 0) turn += 2 * std::numbers::pi;
    if (!clockwise && turn >= 0) turn -= 2 * std::numbers::pi;
    for (int i = 1; i <= steps; ++i) {
        const double angle = begin + turn * i / steps;
        along_.push_back(
            {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
    }
    text_ += fmt::format("A{0} {0} 0 {1} {2} {3}", decimal(radius), large ? 1 : 0,
                         clockwise ? 1 : 0, coordinates(to));
    return *this;
}

Path path_of(const Line& line, bool closed) {
    Path out;
    for (std::size_t i = 0; i < line.size(); ++i) i == 0 ? out.move(line[i]) : out.line(line[i]);
    if (closed) out.close();
    return out;
}

}  // namespace gristwright::cli
