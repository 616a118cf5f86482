#include "engine/evidence/hands.hpp"

#include "engine/evidence/constants.hpp"
#include "engine/evidence/evidence.hpp"

namespace gristwright {

Estimate<double> gauge_habit(const std::vector<double>& ratios) {
    Estimate<double> habit{1, constants::habit_between_people};
    for (const double ratio : ratios)
        habit = posterior(habit, {ratio, constants::habit_between_swatches});
    return habit;
}

}  // namespace gristwright
