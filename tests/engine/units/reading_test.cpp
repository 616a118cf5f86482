#include "engine/units/reading.hpp"

#include <doctest/doctest.h>

#include <initializer_list>
#include <string>

#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

TEST_CASE("lengths as people type them") {
    struct Row {
        const char* text;
        double metres, step;
    };
    for (const auto& [text, length, step] :
         {Row{"226yd", 206.6544, 0.9144}, Row{"206 m", 206, 1}, Row{" 171m ", 171, 1},
          Row{"171,5 m", 171.5, 0.1}, Row{"15.2cm", 0.152, 0.001}, Row{"3 1/2 in", 0.0889, 0.0127},
          Row{"2 ft", 0.6096, 0.3048}, Row{".5 m", 0.5, 0.1}, Row{"1200 yards", 1097.28, 0.9144}}) {
        INFO(text);
        CHECK(in_metres(read_length(text).value) == Approx(length));
        CHECK(in_metres(read_length(text).step) == Approx(step));
    }
}

TEST_CASE("masses, with the step of the last digit written") {
    CHECK(in_grams(read_mass("51g").value) == Approx(51));
    CHECK(in_grams(read_mass("38.5 g").step) == Approx(0.1));
    CHECK(in_ounces(read_mass("1 3/4 oz").value) == Approx(1.75));
    CHECK(in_ounces(read_mass("1 3/4 oz").step) == Approx(0.25));
    CHECK(in_ounces(read_mass("3/4oz").value) == Approx(0.75));
    CHECK(in_grams(read_mass("0.5 lb").value) == near(226.796, 1e-5));
}

TEST_CASE("every spelling of a unit is as much as its sign") {
    struct Row {
        std::initializer_list<const char*> spellings;
        double si;
    };
    for (const auto& [spellings, si] :
         {Row{{"m", "metre", "metres", "meter", "meters", "mtr", "mtrs", "mt", "mts"}, 1},
          Row{{"cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"}, 0.01},
          Row{{"mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters"}, 0.001},
          Row{{"km", "kilometre", "kilometres", "kilometer", "kilometers"}, 1000},
          Row{{"yd", "yds", "yard", "yards"}, 0.9144}, Row{{"ft", "foot", "feet"}, 0.3048},
          Row{{"in", "ins", "inch", "inches"}, 0.0254}})
        for (const std::string spelling : spellings) {
            INFO(spelling);
            CHECK(read_length("2 " + spelling).value.si() == Approx(2 * si));
        }
    for (const auto& [spellings, si] :
         {Row{{"g", "gr", "grs", "gm", "gms", "gram", "grams", "gramme", "grammes"}, 0.001},
          Row{{"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"}, 1},
          Row{{"oz", "ozs", "ounce", "ounces"}, 0.45359237 / 16},
          Row{{"lb", "lbs", "pound", "pounds"}, 0.45359237}})
        for (const std::string spelling : spellings) {
            INFO(spelling);
            CHECK(read_mass("2 " + spelling).value.si() == Approx(2 * si));
        }
}

TEST_CASE("wraps per inch and per centimetre") {
    CHECK(in_wraps_per_inch(read_wraps("16wpi")) == Approx(16));
    CHECK(in_wraps_per_inch(read_wraps("6.3 wraps/cm")) == Approx(16.002));
}

TEST_CASE("a skein is a length and a mass, fractions included") {
    const auto [length, mass] = read_skein("171m/38.5g");
    CHECK(in_metres(length.value) == Approx(171));
    CHECK(in_grams(mass.value) == Approx(38.5));
    const auto [yd, oz] = read_skein("100 1/2 yd / 1 3/4 oz");
    CHECK(in_yards(yd.value) == Approx(100.5));
    CHECK(in_ounces(oz.value) == Approx(1.75));
}

TEST_CASE("micron ranges") {
    CHECK(in_microns(read_micron_range("24-27").second) == Approx(27));
    CHECK(in_microns(read_micron_range("25 micron").first) == Approx(25));
    for (const char* bad : {"27-24", "x", "200", "24-", "24-27 m", "-24"})
        CHECK_THROWS_AS(read_micron_range(bad), Unreadable);
}

TEST_CASE("what is not clearly a measurement is refused") {
    for (const char* bad : {"",
                            "m",
                            "171",
                            "010 m",
                            "05 m",
                            "1,20 0 yd",
                            "nan m",
                            "inf m",
                            "1e999 m",
                            "-5 m",
                            "0 m",
                            "5 parsecs",
                            "5 m m",
                            "5 m\nB",
                            "1 3/0 in",
                            "1..5 m",
                            "9999999999999999 m",
                            "1 2 m",
                            "+5 m",
                            "5 g"}) {
        INFO(bad);
        CHECK_THROWS_AS(read_length(bad), Unreadable);
    }
    for (const char* bad : {"171m", "171/38", "171m/38.5g/4g", "171m/", "/38g"}) {
        INFO(bad);
        CHECK_THROWS_AS(read_skein(bad), Unreadable);
    }
}

TEST_CASE("the complaint names the text, the fault and what would be right") {
    CHECK_THROWS_WITH(read_length("38 g"),
                      "cannot read '38 g': this is a mass, and a length is wanted here; write it "
                      "such as 171m or 187yd (units: m, cm, mm, yd, ft, in)");
    CHECK_THROWS_WITH(read_mass("5 \x1b[31m"),
                      "cannot read '5 ?[31m': '?[31m' is no unit for a mass; write it such as "
                      "38.5g or 1 3/4 oz (units: g, kg, oz, lb)");
    CHECK_THROWS_WITH(read_length("1.200m"),
                      "'1.200m' can mean 1.2 m or 1200 m: which? Write it without the mark");
}

TEST_CASE("gauges, setts and twist are read as the trade writes them") {
    CHECK(in_stitches_per_10cm(read_gauge("28st/10cm")) == doctest::Approx(28));
    CHECK(in_stitches_per_10cm(read_gauge("28 sts / 10 cm")) == doctest::Approx(28));
    CHECK(in_stitches_per_inch(read_gauge("7 st/in")) == doctest::Approx(7));
    CHECK(in_stitches_per_inch(read_gauge("28/4in")) == doctest::Approx(7));
    CHECK(in_ends_per_10cm(read_sett("40/10cm")) == doctest::Approx(40));
    CHECK(in_ends_per_inch(read_sett("12.5 epi")) == doctest::Approx(12.5));
    CHECK(in_ends_per_inch(read_sett("10 ends/in")) == doctest::Approx(10));
    CHECK(in_turns_per_inch(read_twist("5tpi")) == doctest::Approx(5));
    CHECK(read_share("90") == doctest::Approx(0.9));
    CHECK(read_share("95 %") == doctest::Approx(0.95));
}

TEST_CASE("unclear gauges, setts and shares are refused") {
    for (const char* bad : {"", "28", "28st", "st/10cm", "28st/", "28st/0cm", "0st/10cm",
                            "28st/10g", "28epi", "nan/10cm", "28 loops/10cm", "-3st/in"})
        CHECK_THROWS_AS(read_gauge(bad), Unreadable);
    for (const char* bad : {"", "10", "10 wpi", "7 st/in", "0epi", "inf epi"})
        CHECK_THROWS_AS(read_sett(bad), Unreadable);
    for (const char* bad : {"", "101", "-1", "0.9x", "90 g"})
        CHECK_THROWS_AS(read_share(bad), Unreadable);
}
