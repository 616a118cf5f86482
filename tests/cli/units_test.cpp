#include "cli/output/units.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "engine/units/reading.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;

namespace {

const Units metric{UnitChoice::metric}, imperial{UnitChoice::imperial}, both{UnitChoice::both};

std::string inside_brackets(const std::string& text) {
    const auto begin = text.find('(');
    return text.substr(begin + 1, text.rfind(')') - begin - 1);
}

// Half of the last figure written, in SI: what rounding may take away.
template <class Q>
bool rounded(Q value, const Reading<Q>& read) {
    return std::abs(value.si() - read.value.si()) <= 0.5000001 * read.step.si();
}

}  // namespace

TEST_CASE("what is written is read back by our own reader within half its last figure") {
    std::mt19937 random{6};
    std::uniform_real_distribution<double> exponent(-0.7, 3.5);
    for (int i = 0; i < 500; ++i) {
        const double value = std::pow(10.0, exponent(random));
        INFO(value);
        for (const auto& units : {metric, imperial}) {
            CHECK(rounded(metres(value), read_length(units.yarn(metres(value)))));
            CHECK(rounded(centimetres(value), read_length(units.size(centimetres(value)))));
            CHECK(rounded(grams(20 * value), read_mass(units.mass(grams(20 * value)))));
        }
        const auto sett = ends_per_10cm(2 + value / 8);  // threads that can be
        CHECK(std::abs(in_ends_per_10cm(read_sett(metric.sett(sett)) - sett)) <= 0.0500001);
        CHECK(std::abs(in_ends_per_inch(read_sett(imperial.sett(sett)) - sett)) <= 0.0500001);
        const auto gauge = stitches_per_10cm(2 + value / 32);
        CHECK(std::abs(in_stitches_per_10cm(read_gauge(metric.stitch_gauge(gauge)) - gauge)) <=
              0.5000001);
    }
}

TEST_CASE("both units are the metric ones with the imperial ones in brackets") {
    for (const double value : {0.37, 1.0, 9.97, 42.0, 99.97, 659.0, 12345.0}) {
        const auto length = metres(value);
        CHECK(both.yarn(length) == metric.yarn(length) + " (" + imperial.yarn(length) + ")");
        CHECK(inside_brackets(both.size(length)) == imperial.size(length));
        CHECK(inside_brackets(both.mass(grams(value))) == imperial.mass(grams(value)));
        CHECK(both.sizes(length, length * 2) ==
              metric.sizes(length, length * 2) + " (" + imperial.sizes(length, length * 2) + ")");
    }
    const Estimate<Length> e{metres(540), 0.1};
    CHECK(both.yarn_range(e) == metric.yarn_range(e) + ", " + imperial.yarn_range(e));
}

TEST_CASE("a range holds its own middle, as written too") {
    std::mt19937 random{7};
    std::uniform_real_distribution<double> exponent(-0.5, 3.5), spread(0, 0.6);
    for (int i = 0; i < 300; ++i) {
        const Estimate<Length> e{metres(std::pow(10.0, exponent(random))), spread(random)};
        for (const auto& units : {metric, imperial}) {
            const auto text = units.yarn_range(e);
            INFO(text);
            const double mid = std::stod(text);
            const auto range = inside_brackets(text);
            CHECK(std::stod(range) <= mid);
            CHECK(std::stod(range.substr(range.find("to ") + 3)) >= mid);
        }
    }
}

TEST_CASE("figures as they are written, by hand") {
    const std::pair<std::string, const char*> cases[] = {
        {metric.yarn(metres(659.4)), "659 m"},
        {imperial.yarn(metres(659.4)), "721 yd"},
        {metric.yarn(metres(4.44)), "4.4 m"},
        {metric.size(centimetres(139.2)), "139 cm"},
        {imperial.size(inches(55)), "55 in"},
        {metric.sizes(centimetres(20), centimetres(160)), "20 x 160 cm"},
        {imperial.mass(ounces(5.2)), "5.2 oz"},
        {metric.gauge(stitches_per_10cm(27), stitches_per_10cm(36)), "27 st and 36 rows/10 cm"},
        {metric.sett(ends_per_10cm(40)), "40/10 cm"},
        {imperial.sett(ends_per_inch(10.2)), "10.2 epi"},
        {metric.needle(millimetres(3.5)), "3.5 mm"},
        {metric.needle(millimetres(4)), "4 mm"},
    };
    for (const auto& [said, right] : cases) CHECK(said == right);
    CHECK(imperial.imperial());
    CHECK_FALSE(both.imperial());
}
