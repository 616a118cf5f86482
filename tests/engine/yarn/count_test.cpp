#include "engine/yarn/count.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cstdio>
#include <stdexcept>
#include <string>

#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

// What GNU units says `expression` is in tex.
double gnu_units_tex(const std::string& expression) {
    const std::string command = "units -t -- '" + expression + "' tex";
    std::array<char, 64> line{};
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    REQUIRE(fgets(line.data(), line.size(), pipe) != nullptr);
    pclose(pipe);
    return std::stod(line.data());
}

double between(double count, const char* from, const char* to) {
    return count_of(linear_density_of(count, count_system(from)), count_system(to));
}

double counted(Length length, Mass mass, const char* system) {
    return count_of(mass / length, count_system(system));
}

}  // namespace

TEST_CASE("every count system GNU units 2.22 knows agrees with it") {
    struct Row {
        const char *system, *expression;
    };
    for (const auto& [system, expression] :
         {Row{"worsted count", "1/(30 worstedyarncount)"},
          Row{"cotton count", "1/(30 cottonyarncount)"}, Row{"woollen run", "1/(30 woolyarnrun)"},
          Row{"Philadelphia cut", "1/(30 yarncut)"}, Row{"linen lea", "1/(30 linenyarncount)"},
          Row{"metric count", "1/(30 metricyarncount)"}, Row{"denier", "30 denier"},
          Row{"Galashiels cut", "1/(30*200 yd/lb)"}, Row{"Yorkshire skein", "1/(30*256 yd/lb)"},
          Row{"yards per pound", "1/(30 yd/lb)"}}) {
        INFO(system);
        CHECK(in_tex(linear_density_of(30, count_system(system))) ==
              near(gnu_units_tex(expression), 1e-6));
    }
}

TEST_CASE("a count survives the way through tex and back in every system") {
    for (const auto& system : count_systems())
        CHECK(count_of(linear_density_of(12.5, system), system) == Approx(12.5));
}

TEST_CASE("counts from a weighed length: W. Davis, Hosiery Manufacture (c. 1920), ch. V") {
    const auto grains = [](double n) { return pounds(n / 7000); };
    const auto drams = [](double n) { return pounds(n / 256); };
    CHECK(counted(yards(20), grains(10), "worsted count") == Approx(25));         // ex. 1
    CHECK(counted(yards(20), grains(24), "worsted count") == near(10.4, 0.005));  // 3
    CHECK(counted(yards(20), drams(2), "Galashiels cut") == Approx(12.8));        // ex. 5
    CHECK(counted(yards(20), drams(1.25), "Galashiels cut") == near(20.4, 0.005));
}

TEST_CASE("counts and weights: American Correspondence School 1898, Dooley 1914, Brooks 1892") {
    CHECK(counted(yards(4000), ounces(5), "woollen run") == Approx(8));
    CHECK(in_ounces(yards(8800) * linear_density_of(5.5, count_system("woollen run"))) ==
          Approx(16));
    CHECK(between(8000, "yards per pound", "woollen run") == Approx(5));
    CHECK(between(5200, "yards per pound", "woollen run") == Approx(3.25));
    CHECK(between(15, "Philadelphia cut", "yards per pound") == Approx(4500));
    CHECK(in_ounces(yards(9240) * linear_density_of(44, count_system("cotton count"))) ==
          Approx(4));
}

TEST_CASE("conversions: Davis ch. V ex. 7-9, Brooks 1892") {
    CHECK(between(20, "cotton count", "worsted count") == Approx(30));
    CHECK(between(40, "cotton count", "worsted count") == Approx(60));
    CHECK(between(40, "cotton count", "Yorkshire skein") == Approx(131.25));
    CHECK(between(20, "cotton count", "linen lea") == Approx(56));
}

TEST_CASE("folded yarns: Davis ch. VI ex. 27, 31, 33, Brooks 1892") {
    const auto fold = [](double a, const char* in_a, double b, const char* in_b, const char* out) {
        return count_of(folded(linear_density_of(a, count_system(in_a)),
                               linear_density_of(b, count_system(in_b))),
                        count_system(out));
    };
    const char* worsted = "worsted count";
    CHECK(fold(60, worsted, 40, worsted, worsted) == Approx(24));
    CHECK(fold(90, worsted, 20, worsted, worsted) == Approx(16 + 4.0 / 11));
    CHECK(fold(40, worsted, 20, worsted, worsted) == Approx(13 + 1.0 / 3));
    CHECK(fold(16, worsted, 21, "Yorkshire skein", "Yorkshire skein") == Approx(13.125));
}

TEST_CASE(
    "lengths and counts: J. T. Taylor, W. H. Dooley 1914, Davis ch. V ex. 8-10, Brooks 1892") {
    const auto tex_of = [](double n, const char* system) {
        return linear_density_of(n, count_system(system));
    };
    CHECK(in_ounces(yards(120) * tex_of(40, "cotton count")) / 16 * 7000 == Approx(25));  // C08
    // C20: 4 x 4 in of cotton, 28 + 28 threads an inch, 8.6 grains.
    CHECK(counted(inches(4 * 4 * 56), pounds(8.6 / 7000), "cotton count") == near(24, 0.006));
    CHECK(in_yards(ounces(0.25) / tex_of(60, "cotton count")) == Approx(787.5));  // V08: spun silk
    CHECK(between(12, "Galashiels cut", "yards per pound") / 240 == Approx(10));  // V03: Alloa
    // V11: French cotton count, 1000 m per 500 g, is half the metric count.
    CHECK(between(20, "cotton count", "metric count") / 2 == near(16.93, 0.001));
}

TEST_CASE("folded, split and missing components: Davis ch. VI ex. 34-45, Brooks 1892") {
    const auto worsted = [](double n) {
        return linear_density_of(n, count_system("worsted count"));
    };
    const auto worsted_of = [](LinearDensity d) {
        return count_of(d, count_system("worsted count"));
    };
    const auto cotton = [](double n) { return linear_density_of(n, count_system("cotton count")); };
    const auto cut = folded(linear_density_of(18, count_system("Galashiels cut")), cotton(20));
    CHECK(count_of(cut, count_system("Galashiels cut")) == near(14.82, 0.001));  // F06
    // F09: a back of 10's cotton with half as much again in each course weighs as much as the face.
    CHECK(in_tex(cotton(10) * 1.5) == Approx(in_tex(worsted(10))));
    CHECK(worsted_of(folded(worsted(10), cotton(10) * 1.5)) == Approx(5));
    CHECK(worsted_of(worsted(10) - worsted(48) - worsted(24)) == Approx(26 + 2.0 / 3));  // F11
    const auto third = worsted(10) - worsted(40) - worsted(30);
    CHECK(worsted_of(third) == Approx(24));  // F12, also as 16's cotton and 52.5 skeins
    CHECK(count_of(third, count_system("cotton count")) == Approx(16));
    CHECK(count_of(third, count_system("Yorkshire skein")) == Approx(52.5));
    const auto other = worsted(11) - worsted(18);  // F15: 2/22's made up by 18's and one more
    CHECK(worsted_of(other) == Approx(28 + 2.0 / 7));
    CHECK(other / worsted(11) == near(0.38889, 1e-4));
    CHECK(worsted_of(folded(worsted(60), worsted(15))) == Approx(12));  // F17
    CHECK(worsted(60) / worsted(12) == Approx(0.2));
    CHECK(count_of(cotton(300) * 3, count_system("cotton count")) == Approx(100));  // F21
}

TEST_CASE("an unknown system is refused by name") {
    CHECK_THROWS_WITH_AS(count_system("furlongs"), "no count system is called 'furlongs'",
                         std::out_of_range);
}
