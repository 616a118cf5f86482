#include "engine/yarn/evidence.hpp"

#include <algorithm>
#include <cmath>

#include "engine/yarn/constants.hpp"

namespace gristwright {

using namespace constants;

const WeighedFabric* Evidence::weighed_in(std::string_view fabric) const {
    for (const auto& w : weighed)
        if (w.fabric == fabric) return &w;
    return nullptr;
}

Estimate<double> posterior(Estimate<double> prior, Estimate<double> seen) {
    if (prior.spread == 0) return prior;
    if (seen.spread == 0) return seen;
    const double a = 1 / (prior.spread * prior.spread), b = 1 / (seen.spread * seen.spread);
    return {std::exp((a * std::log(prior.mid) + b * std::log(seen.mid)) / (a + b)),
            1 / std::sqrt(a + b)};
}

Estimate<Gauge> by_habit(const Estimate<Gauge>& table, const Estimate<double>& habit) {
    return {table.mid * habit.mid,
            std::min(table.spread, together(habit.spread, habit_between_batches))};
}

double surprise(Estimate<double> prior, Estimate<double> seen) {
    const double spread = together(prior.spread, seen.spread);
    return spread > 0 ? std::abs(std::log(seen.mid / prior.mid)) / spread : INFINITY;
}

}  // namespace gristwright
