// Wool grades by fibre diameter: the spinning count and the older blood name of each band.
#pragma once

#include <string>
#include <vector>

#include "engine/units/quantity.hpp"

namespace gristwright {

struct WoolGrade {
    std::string blood, count;  // "3/8", "58s"
    Length low, high;          // mean fibre diameter, both ends in the band
    Length most_deviation;     // standard deviation that the grade allows
    std::string source;
};

// The row whose band holds the diameter, to a hundredth of a micron as the grades are printed;
// nullptr outside all of them.
const WoolGrade* wool_grade(const std::vector<WoolGrade>& table, Length diameter);

}  // namespace gristwright
