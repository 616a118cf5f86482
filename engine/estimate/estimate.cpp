#include "engine/estimate/estimate.hpp"

#include <boost/math/distributions/normal.hpp>

namespace gristwright {
namespace {

// In doubles throughout: a long double is slow, and not the same on every machine.
using InDoubles = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
using Normal = boost::math::normal_distribution<double, InDoubles>;

}  // namespace

double normal_below(double z) { return boost::math::cdf(Normal{}, z); }

double normal_quantile(double p) { return boost::math::quantile(Normal{}, p); }

double chance_of_enough(double need_mid, double need_spread, double have_mid, double have_spread) {
    if (need_mid <= 0) return 1;
    if (have_mid <= 0) return 0;
    const double spread = together(need_spread, have_spread);
    const double room = std::log(have_mid / need_mid);
    if (spread == 0) return room >= 0 ? 1 : 0;
    return normal_below(room / spread);
}

double set_aside(double chance, double need_spread, double have_spread) {
    return std::exp(normal_quantile(chance) * together(need_spread, have_spread));
}

Estimate<double> weigh(Estimate<double> a, Estimate<double> b) {
    const double weight_a = 1 / (a.spread * a.spread);
    const double weight_b = 1 / (b.spread * b.spread);
    if (std::isinf(weight_a)) return a;
    if (std::isinf(weight_b)) return b;
    const double total = weight_a + weight_b;
    const double log_mid = (weight_a * std::log(a.mid) + weight_b * std::log(b.mid)) / total;
    const double apart = std::log(a.mid / b.mid) / together(a.spread, b.spread);
    const double birge = std::max(1.0, std::abs(apart));
    return {std::exp(log_mid), birge / std::sqrt(total)};
}

}  // namespace gristwright
