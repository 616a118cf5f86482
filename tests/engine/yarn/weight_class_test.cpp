#include "engine/yarn/weight_class.hpp"

#include <doctest/doctest.h>

using namespace gristwright;

namespace {

// Rows of the trade's table (weight_classes.csv: Craft Yarn Council gauges, Spin-Off yards).
WeightClass row(int number, const char* name, std::optional<double> wpi_low,
                std::optional<double> wpi_high, std::optional<double> yards_low,
                std::optional<double> yards_high) {
    WeightClass r;
    r.number = number;
    r.name = name;
    r.wpi_low = wpi_low;
    r.wpi_high = wpi_high;
    r.yd_per_lb_low = yards_low;
    r.yd_per_lb_high = yards_high;
    return r;
}

const std::vector<WeightClass> table{
    row(0, "lace", 30, {}, 2401, {}), row(1, "super fine", 14, 30, 1901, 2400),
    row(2, "fine", 12, 18, 1201, 1900), row(6, "super bulky", 5, 6, {}, 400),
    row(7, "jumbo", 1, 4, {}, {})};

LinearDensity yards_per_pound(double yd) { return pounds(1) / yards(yd); }

}  // namespace

TEST_CASE("a yarn between two wraps bands fits both, grist bands do not overlap") {
    const auto by_wraps = classes_by_wraps(table, wraps_per_inch(16));
    REQUIRE(by_wraps.size() == 2);
    CHECK(by_wraps[0].name == "super fine");
    CHECK(by_wraps[1].name == "fine");
    const auto by_grist = classes_by_grist(table, tex(224.7));
    REQUIRE(by_grist.size() == 1);
    CHECK(by_grist[0].name == "super fine");
}

TEST_CASE("open ends hold everything beyond, a gap goes to the nearer row") {
    CHECK(classes_by_grist(table, yards_per_pound(9000))[0].name == "lace");
    CHECK(classes_by_grist(table, yards_per_pound(50))[0].name == "super bulky");
    CHECK(classes_by_grist(table, yards_per_pound(1900.4))[0].name == "fine");
    CHECK(classes_by_wraps({}, wraps_per_inch(16)).empty());
}

TEST_CASE("500 yd per 100 g is within 6 % of the lace boundary (heavy lace: common practice)") {
    const LinearDensity fine = grams(100) / yards(500);
    CHECK(classes_by_grist(table, fine)[0].name == "super fine");
    CHECK(classes_by_grist(table, fine * 0.94)[0].name == "lace");
}
