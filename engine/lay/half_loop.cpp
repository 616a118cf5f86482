#include "engine/lay/half_loop.hpp"

#include <cmath>

#include "engine/lay/constants.hpp"

namespace gristwright::lay {

Place HalfLoop::at(double t) const {
    const double s = 1 - t, a = 3 * s * s * t, b = 3 * s * t * t, c = t * t * t;
    return {-w / 2 * s * s * s + (-w / 2 + reach) * a - reach * b, h * (b + c)};
}

double HalfLoop::length() const {
    double out = 0;
    auto last = at(0);
    for (int i = 1; i <= 200; ++i) {
        const auto p = at(i / 200.0);
        out += std::hypot(p.x - last.x, p.y - last.y);
        last = p;
    }
    return out;
}

HalfLoop half_loop(double w, double h, double length) {
    double low = w / 6, high = 2 * length;
    for (int i = 0; i < 50; ++i) {
        const double middle = (low + high) / 2;
        (HalfLoop{w, h, middle}.length() < length ? low : high) = middle;
    }
    return {w, h, (low + high) / 2};
}

double peirce_loop(double stitch, double row, double thickness) {
    return 2 * row + stitch + constants::peirce_thickness * thickness;
}

}  // namespace gristwright::lay
