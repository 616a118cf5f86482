#include "engine/yarn/loft.hpp"

#include "engine/yarn/constants.hpp"

#include <numbers>

namespace gristwright {
namespace {

using namespace constants;

double cross_section(Length diameter) {
    return std::numbers::pi / 4 * diameter.si() * diameter.si();
}

}  // namespace

Length diameter_from_volume(LinearDensity d, double volume) {
    const double square_metres = d.si() * volume * 1e-3;  // cm3/g = 1e-3 m3/kg
    return Length::from_si(std::sqrt(4 * square_metres / std::numbers::pi));
}

double packing_from_wraps(LinearDensity d, Wraps wraps, Density fibre) {
    return d.si() / (fibre.si() * cross_section(diameter_from_wraps(wraps)));
}

double specific_volume(LinearDensity d, Wraps wraps) {
    return cross_section(diameter_from_wraps(wraps)) / d.si() * 1e3;
}

double wraps_margin(const WrapsReading& reading) {
    const double counted = reading.count * reading.over;
    return together(0.5 / counted / std::sqrt(3.0), between_people);
}

double packing_margin(double tex_margin, double wraps_margin) {
    return together(tex_margin, 2 * wraps_margin);
}

double ashenhurst(SpunAs spun) { return spun == SpunAs::woollen ? woollen_c : worsted_c; }

Length packed_diameter(LinearDensity d, double c) {
    const double yards_per_pound = (pounds(1) / d) / yards(1);
    return inches(1 / (c * std::sqrt(yards_per_pound)));
}

PackingBand usual_packing(Preparation preparation, Draw draw) {
    if (preparation == Preparation::combed && draw == Draw::short_draw)
        return {combed_packing.low, combed_packing.high};
    if (preparation == Preparation::carded && draw == Draw::long_draw)
        return {carded_packing.low, carded_packing.high};
    return {};
}

}  // namespace gristwright
