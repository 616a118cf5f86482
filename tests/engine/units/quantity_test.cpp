#include "engine/units/quantity.hpp"

#include <doctest/doctest.h>

#include <type_traits>

#include "tests/near.hpp"

using namespace gristwright;

// What must not compile: a length and a mass in one sum, a bare number as a quantity.
template <class A, class B>
concept addable = requires(A a, B b) { a + b; };
template <class A, class B>
concept comparable = requires(A a, B b) { a < b; };
template <class A, class B>
concept assignable = requires(A a, B b) { a = b; };
template <class A>
concept read_in_metres = requires(A a) { in_metres(a); };
static_assert(comparable<Length, Length> && assignable<Length, Length> && read_in_metres<Length>);
static_assert(!comparable<Length, Mass> && !comparable<Wraps, Twist> && !comparable<Mass, double>);
static_assert(!assignable<Length, double> && !assignable<Length, Area>);
static_assert(!assignable<double, Length> && !assignable<ArealDensity, LinearDensity>);
static_assert(!read_in_metres<Mass> && !read_in_metres<double>);
static_assert(!std::is_constructible_v<Length, double>);  // metres(3), not Length(3)
static_assert(addable<Length, Length>);
static_assert(!addable<Length, Mass>);
static_assert(!addable<Gauge, Sett>);
static_assert(!addable<Length, double>);
static_assert(!std::is_convertible_v<double, Length>);
static_assert(!std::is_convertible_v<Length, double>);
static_assert(std::is_same_v<decltype(Mass{} / Length{}), LinearDensity>);

TEST_CASE("exact definitions of the yard and the pound (international agreement of 1959)") {
    CHECK(in_metres(yards(1)) == doctest::Approx(0.9144));
    CHECK(in_grams(pounds(1)) == doctest::Approx(453.59237));
    CHECK(in_grams(ounces(16)) == doctest::Approx(453.59237));
    CHECK(in_inches(centimetres(2.54)) == doctest::Approx(1));
}

TEST_CASE("240 yd weighing 50 g is 4.8 yd/g") {
    CHECK(in_yards(yards(240)) / in_grams(grams(50)) == near(4.8, 0.001));
    CHECK(in_tex(grams(50) / yards(240)) == near(227.8, 0.001));
}

TEST_CASE("a quantity comes back in the unit it was made in") {
    CHECK(in_wraps_per_inch(wraps_per_inch(16)) == doctest::Approx(16));
    CHECK(in_wraps_per_cm(wraps_per_inch(16)) == near(6.299, 0.001));
    CHECK(in_stitches_per_10cm(stitches_per_inch(7)) == near(27.56, 0.001));
    CHECK(in_ends_per_inch(ends_per_10cm(40)) == doctest::Approx(10.16));
}

TEST_CASE("products mean what the trade means") {
    CHECK(stitches_per_10cm(28) * centimetres(20) == doctest::Approx(56));
    CHECK(in_grams(tex(224.7) * metres(659)) == near(148.08, 0.001));
    CHECK(in_metres(grams(148.1) / tex(224.7)) == near(659.1, 0.001));
    CHECK(metres(3) * metres(2) / metres(2) == metres(3));
    CHECK(metres(3) - metres(4) < metres(0));
}
