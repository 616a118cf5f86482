// Areas: elementary geometry; a parabola's segment is two thirds of its box (Archimedes).
#include "engine/project/shape.hpp"

#include "engine/project/constants.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gristwright {
namespace {

constexpr std::array<std::string_view, 10> shape_words{
    "rectangle",          "tube",   "triangle", "bias triangle", "half circle", "crescent",
    "square from corner", "circle", "cap",      "taper"};

}  // namespace

double crown_of(const Outline& o) {
    return std::min(1.0, constants::crown_depth * o.width.si() / o.length.si());
}

Area crown_leaves_out(const Outline& o) {
    return o.shape == Shape::cap ? o.width * o.length * (crown_of(o) / 2) : Area{};
}

std::string_view words(Shape shape) { return shape_words[static_cast<std::size_t>(shape)]; }

std::optional<Shape> shape_named(std::string_view word) {
    const auto found = std::find(shape_words.begin(), shape_words.end(), word);
    if (found == shape_words.end()) return {};
    return static_cast<Shape>(found - shape_words.begin());
}

bool one_measure(Shape shape) {
    return shape == Shape::triangle || shape == Shape::bias_triangle ||
           shape == Shape::half_circle || shape == Shape::square_from_corner ||
           shape == Shape::circle;
}

Area area(const Outline& o) {
    const auto side = o.width * o.width;
    switch (o.shape) {
        case Shape::rectangle:
        case Shape::tube:
            return o.width * o.length;
        case Shape::triangle:
            return side * 0.25;
        case Shape::bias_triangle:
            return side * 0.5;
        case Shape::half_circle:
            return side * (std::numbers::pi / 8);
        case Shape::crescent:
            return o.width * o.length * (2.0 / 3);
        case Shape::square_from_corner:
            return side;
        case Shape::circle:
            return side * (std::numbers::pi / 4);
        case Shape::cap:
            return o.width * o.length * (1 - crown_of(o) / 2);
        case Shape::taper:
            return (o.width + o.narrow) * o.length * 0.5;
    }
    return {};
}

StitchesRows stitches_and_rows(const Outline& o, Gauge w, Gauge c) {
    const double across = w * o.width;
    const double geometric = std::sqrt(w.si() * c.si());
    switch (o.shape) {
        case Shape::triangle: {
            const double rows = geometric * o.width.si() / 2;
            return {2 * rows, rows};
        }
        case Shape::bias_triangle:
            return {across, c * o.width};
        case Shape::half_circle:
            return {across * std::numbers::pi / 2, c * o.width / 2};
        case Shape::square_from_corner:
            return {across * std::numbers::sqrt2, c * o.width * std::numbers::sqrt2};
        case Shape::circle:
            return {across * std::numbers::pi, c * o.width / 2};
        default:
            return {across, c * o.length};
    }
}

double yarn_after_rows(const Outline& o, double t) {
    t = std::clamp(t, 0.0, 1.0);
    switch (o.shape) {
        case Shape::rectangle:
        case Shape::tube:
            return t;
        case Shape::triangle:
        case Shape::bias_triangle:
        case Shape::half_circle:
        case Shape::circle:
            return t * t;
        case Shape::crescent:  // worked from the long top edge's middle outwards
            return 1 - std::pow(1 - t, 1.5);
        case Shape::square_from_corner:
            return t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) * (1 - t);
        case Shape::cap: {
            const double k = crown_of(o);
            const double whole = 1 - k / 2;
            if (t <= 1 - k) return t / whole;
            const double left = (1 - t) / k;  // of the crown
            return 1 - k * left * left / 2 / whole;
        }
        case Shape::taper: {
            const double n = o.narrow / o.width;
            return t * (1 - t * (1 - n) / 2) / ((1 + n) / 2);
        }
    }
    return t;
}

double rows_for_yarn(const Outline& o, double yarn) {
    double low = 0, high = 1;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (yarn_after_rows(o, middle) < yarn ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace gristwright
