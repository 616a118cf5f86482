#include "engine/estimate/estimate.hpp"

#include <doctest/doctest.h>

#include <random>
#include <stdexcept>

#include "engine/units/quantity.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

TEST_CASE("normal quantiles (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1)") {
    CHECK(normal_quantile(0.975) == near(1.960, 0.0003));
    CHECK(normal_quantile(0.95) == near(1.645, 0.0003));
    CHECK(normal_below(1.0) == near(0.84134, 0.0001));
    CHECK(normal_below(normal_quantile(0.9)) == Approx(0.9));
}

TEST_CASE("more of the same table, both ways, symmetric, outside 0 to 1 is refused") {
    struct Row {
        double p, z;
    };
    for (const auto& [p, z] :
         {Row{0.5, 0}, Row{0.9, 1.282}, Row{0.99, 2.326}, Row{0.995, 2.576}, Row{0.999, 3.090}}) {
        CHECK(std::abs(normal_quantile(p) - z) < 0.0006);
        CHECK(std::abs(normal_below(z) - p) < 0.0002);
        CHECK(normal_quantile(1 - p) == Approx(-normal_quantile(p)));
    }
    for (double p = 0.001; p < 1; p += 0.007)
        CHECK(normal_below(normal_quantile(p)) == near(p, 1e-12));
    for (const double p : {-0.1, 1.1}) CHECK_THROWS_AS(normal_quantile(p), std::domain_error);
}

TEST_CASE("the central range of an estimate is symmetric in the logarithm") {
    const Estimate<Length> have{metres(600), 0.05};
    CHECK(have.low() < have.mid);
    CHECK(have.low() / have.mid == Approx(have.mid / have.high()));
    CHECK(Estimate<Length>{metres(5), 0}.quantile(0.99) == metres(5));
}

TEST_CASE("certainty in closed form equals a Monte Carlo within 1 %") {
    std::mt19937_64 random{20261125};
    std::normal_distribution<double> normal;
    for (const double ratio : {0.8, 0.95, 1.0, 1.1, 1.3}) {
        const Estimate<Length> need{metres(500 * ratio), 0.12}, have{metres(500), 0.03};
        int enough = 0;
        const int trials = 200'000;
        for (int i = 0; i < trials; ++i) {
            const double needed = in_metres(need.mid) * std::exp(need.spread * normal(random));
            const double there = in_metres(have.mid) * std::exp(have.spread * normal(random));
            enough += needed <= there;
        }
        INFO("need / have = ", ratio);
        CHECK(std::abs(chance_of_enough(need, have) - enough / double(trials)) < 0.01);
    }
}

TEST_CASE("certainty at the edges") {
    CHECK(chance_of_enough(0, 0.1, 5, 0.1) == 1);
    CHECK(chance_of_enough(5, 0.1, 0, 0.1) == 0);
    CHECK(chance_of_enough(5, 0, 5, 0) == 1);
    CHECK(chance_of_enough(5.01, 0, 5, 0) == 0);
    CHECK(chance_of_enough(5, 0.1, 5, 0.2) == Approx(0.5));
}

TEST_CASE("two readings weighed: equal margins meet in the middle and narrow by root two") {
    const auto both = weigh({100, 0.1}, {100, 0.1});
    CHECK(both.mid == Approx(100));
    CHECK(both.spread == Approx(0.1 / std::sqrt(2.0)));
}

TEST_CASE("readings that disagree never come out surer than their disagreement") {
    const auto apart = weigh({100, 0.05}, {150, 0.05});
    CHECK(apart.mid == Approx(std::sqrt(15000.0)));
    CHECK(apart.spread > 0.15);
    CHECK(weigh({100, 0}, {150, 0.05}).mid == 100);
}
