#include "engine/yarn/weight_class.hpp"

#include <cmath>
#include <limits>

#include "engine/yarn/count.hpp"

namespace gristwright {
namespace {

using Bound = std::optional<double> WeightClass::*;

double distance(std::optional<double> low, std::optional<double> high, double value) {
    if (low && value < *low) return std::log(*low / value);
    if (high && value > *high) return std::log(value / *high);
    return 0;
}

std::vector<WeightClass> holding(const std::vector<WeightClass>& table, Bound low, Bound high,
                                 double value) {
    std::vector<WeightClass> found;
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& row : table) {
        if (!(row.*low) && !(row.*high)) continue;
        const double away = distance(row.*low, row.*high, value);
        if (away < nearest) found.clear(), nearest = away;
        if (away == nearest) found.push_back(row);
    }
    return found;
}

}  // namespace

std::vector<WeightClass> classes_by_grist(const std::vector<WeightClass>& table, LinearDensity d) {
    return holding(table, &WeightClass::yd_per_lb_low, &WeightClass::yd_per_lb_high,
                   count_of(d, count_system("yards per pound")));
}

std::vector<WeightClass> classes_by_wraps(const std::vector<WeightClass>& table, Wraps laid) {
    return holding(table, &WeightClass::wpi_low, &WeightClass::wpi_high, in_wraps_per_inch(laid));
}

}  // namespace gristwright
