// A positive quantity known only within a margin, as a log-normal: the median and the standard
// deviation of its natural logarithm. For small margins `spread` is the relative uncertainty
// (0.02 = 2 %). A spread of 0 is an exact value.
#pragma once

#include <cmath>

namespace gristwright {

// Standard normal distribution. `normal_quantile` takes 0 < p < 1, else throws std::domain_error.
double normal_below(double z);
double normal_quantile(double p);

inline double together(double a, double b) { return std::sqrt(a * a + b * b); }  // independent

// Half of the central 90 % range of a normal, from its standard deviation.
constexpr double margin90(double deviation) { return 1.6448536269514722 * deviation; }

template <class Q>
struct [[nodiscard]] Estimate {
    Q mid{};
    double spread = 0;

    // Half of the central 90 % range, relative: 0.05 is said as "±5 %".
    constexpr double margin90() const { return gristwright::margin90(spread); }

    // The value that the quantity stays below with chance p.
    Q quantile(double p) const { return mid * std::exp(spread * normal_quantile(p)); }
    // The central 90 % range.
    Q low() const { return quantile(0.05); }
    Q high() const { return quantile(0.95); }
};

// Chance that what is needed does not exceed what is there: P(need <= have), both log-normal and
// independent. Exact values give 0 or 1 (1 when equal). Nothing needed is always enough.
double chance_of_enough(double need_mid, double need_spread, double have_mid, double have_spread);

template <class Q>
double chance_of_enough(const Estimate<Q>& need, const Estimate<Q>& have) {
    return chance_of_enough(need.mid.si(), need.spread, have.mid.si(), have.spread);
}

// How many times the median need must be to hand, so that P(need <= have) is `chance`.
double set_aside(double chance, double need_spread, double have_spread);

// A quantity equally likely anywhere in a band, as a standard deviation of its logarithm.
inline double band_spread(double low, double high) {
    return std::log(high / low) / std::sqrt(12.0);
}

// Two readings of one quantity, weighted by their precision in the logarithm. When they disagree by
// more than their margins allow, the margin of the answer is widened by the Birge ratio
// (R. T. Birge 1932, Phys. Rev. 40:207 - from memory) so that it never hides the disagreement.
Estimate<double> weigh(Estimate<double> a, Estimate<double> b);

template <class Q>
Estimate<Q> weigh(const Estimate<Q>& a, const Estimate<Q>& b) {
    const auto both = weigh(Estimate<double>{a.mid.si(), a.spread}, {b.mid.si(), b.spread});
    return {Q::from_si(both.mid), both.spread};
}

}  // namespace gristwright
