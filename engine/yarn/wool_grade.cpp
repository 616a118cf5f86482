#include "engine/yarn/wool_grade.hpp"

#include <cmath>

namespace gristwright {
namespace {

long hundredths(Length diameter) { return std::lround(in_microns(diameter) * 100); }

}  // namespace

const WoolGrade* wool_grade(const std::vector<WoolGrade>& table, Length diameter) {
    const long wanted = hundredths(diameter);
    for (const auto& grade : table)
        if (hundredths(grade.low) <= wanted && wanted <= hundredths(grade.high)) return &grade;
    return nullptr;
}

}  // namespace gristwright
