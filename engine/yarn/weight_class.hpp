// The trade's weight classes (lace, super fine, fine, ...): one published row each, by gauge,
// needle, wraps and yards per pound. Bands overlap, so a yarn may fit two.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

struct WeightClass {
    int number = 0;
    std::string name;
    std::optional<double> stitches_4in_low, stitches_4in_high;
    std::optional<double> needle_mm_low, needle_mm_high;
    std::optional<double> wpi_low, wpi_high;
    std::optional<double> yd_per_lb_low, yd_per_lb_high;
    std::string source;
};

// Rows whose band holds the value; between two bands, the nearer row. Finest first.
std::vector<WeightClass> classes_by_grist(const std::vector<WeightClass>& table, LinearDensity d);
std::vector<WeightClass> classes_by_wraps(const std::vector<WeightClass>& table, Wraps laid);

}  // namespace gristwright
