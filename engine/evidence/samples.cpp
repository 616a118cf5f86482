#include "engine/evidence/samples.hpp"

#include <algorithm>
#include <cmath>

#include "engine/evidence/constants.hpp"
#include "engine/project/constants.hpp"

namespace gristwright {
namespace {

using namespace constants;

double counting_error(const Sample& s, double threads) {
    return std::hypot(s.read_error / threads, s.variation / std::sqrt(threads));
}

// The smallest side whose error is at most r: the error falls as the side grows.
Length side_for(const Sample& s, double r) {
    double low = 0, high = 1e4;
    for (int i = 0; i < 80; ++i) {
        const double middle = (low + high) / 2;
        (s.error(metres(middle)) > r ? low : high) = middle;
    }
    return metres(high);
}

}  // namespace

Length Sample::metres(Length side) const {
    const double a = side.si();
    return gristwright::metres(fixed + a * (linear + a * square));
}

Length Sample::side(Length given) const {
    const double room = given.si() - fixed;
    if (room <= 0) return {};
    if (square <= 0) return gristwright::metres(room / linear);
    const double half = linear / (2 * square);
    return gristwright::metres(std::sqrt(half * half + room / square) - half);
}

double Sample::error(Length side) const {
    const double span = measured * side.si();
    if (span <= 0) return INFINITY;
    const double reading =
        std::max(read_error / (span * count), mark_error * std::sqrt(2.0) / span);
    return std::hypot(reading, variation / std::sqrt(span * count));
}

double Sample::second_error(Length side) const {
    const double span = measured * side.si();
    return span <= 0 ? INFINITY : counting_error(*this, span * second_count);
}

Sample knitted_sample(const KnitCloth& cloth) {
    Sample out;
    out.fixed = sample_edges;
    out.square = cloth.metres_per_area.mid.si();
    out.count = cloth.stitches.si();
    out.second_count = cloth.rows.si();
    out.read_error = read_error;
    out.variation = unevenness;
    return out;
}

Sample woven_sample(const WovenCloth& cloth, Length loom_waste) {
    Sample out;
    out.knitted = false;
    const double wide = 1 / (1 - cloth.width.mid), along = 1 / (1 - cloth.length.mid);
    out.linear = cloth.ends.si() * wide * loom_waste.si();
    out.square = wide * along *
                 (cloth.ends.si() * (1 + cloth.warp_take_up) +
                  cloth.picks.si() * (1 + constants::weft_slack));
    out.count = cloth.picks.si() * along;
    out.second_count = cloth.ends.si() * wide;
    out.read_error = read_error;
    out.mark_error = mark_error;
    out.variation = unevenness;
    return out;
}

SampleRange sensible(const Sample& sample, double good_enough) {
    const auto least = metres(least_sample);
    return {least, std::max(least, side_for(sample, good_enough))};
}

}  // namespace gristwright
