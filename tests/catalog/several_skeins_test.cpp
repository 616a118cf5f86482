// Several skeins in one text: as many as are said, asked where it may be all of them together.
#include "catalog/typed/several_skeins.hpp"

#include <doctest/doctest.h>

#include "catalog/typed/skein_own.hpp"
#include "engine/units/failure.hpp"
#include "engine/units/reading.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

TEST_CASE("several skeins: each or x says that they are alike") {
    struct Case {
        const char* text;
        std::size_t count;
        double metres, grams;
    };
    const Case cases[] = {
        {"3 x 110 yds @ 57g", 3, 100.584, 57},
        {"3x110yds/57g", 3, 100.584, 57},
        {"110yd/57g x 3", 3, 100.584, 57},
        {"two skeins of 180 m, 95 g each", 2, 180, 95},
        {"2 x 100g hanks (220 m ea)", 2, 220, 100},
        {"2 \u00E9cheveaux de 150 m (50 g chacun)", 2, 150, 50},
        {"3 Str\u00E4nge zu je 210 m / 100 g", 3, 210, 100},
        {"three 50 g skeins, 100 m each", 3, 100, 50},
        {"3 skeins, 180 m each, 95 g each", 3, 180, 95},
        {"1 skein of 180 m, 95 g", 1, 180, 95},
        {"95 g (skein of 180 m)", 1, 180, 95},
        {"mini 24yd 9g", 1, 21.9456, 9},
        {"half a pound, roughly 600 yd", 1, 548.64, 226.796},
        {"quarter pound, 300 yd", 1, 274.32, 113.398},
        {"one hundred and eighty metres, 90 g", 1, 180, 90},
    };
    for (const auto& c : cases) {
        CAPTURE(c.text);
        const auto read = read_skeins_said(c.text, "--skein", carried().spoken);
        REQUIRE(read.size() == c.count);
        const auto [length, mass] = read_skein(read[0].length.text, read[0].mass.text);
        CHECK(in_metres(length.value) == doctest::Approx(c.metres).epsilon(1e-4));
        CHECK(in_grams(mass.value) == doctest::Approx(c.grams).epsilon(1e-4));
    }
}

TEST_CASE("several skeins: where all of them together may be meant it is asked") {
    for (const char* text :
         {"3 skeins, 540 m in all, 290 g", "4 skeins, 620 m total, 388 g total", "5 skeins 400m",
          "3 x 110 yds, 171g", "3 skeins of 180 m each, 285 g", "2 h\u00E4rvor \u00E0 130 m, 61 g",
          "3 skeins of 180 m each, 540 m total, 285 g", "100 g and a bit, 200 m"}) {
        CAPTURE(text);
        CHECK_THROWS_WITH_AS(several_skeins(text), doctest::Contains("which?"), Refused);
    }
    CHECK_THROWS_AS(several_skeins("400 skeins of 180 m, 95 g each"), Refused);
}

TEST_CASE("several skeins: a number of the skein is its name, and what counts nothing stays") {
    CHECK(several_skeins("Skein 3: 166m/71g").name == "skein 3");
    CHECK(several_skeins("Skein 3: 166m/71g").count == 1);
    for (const char* text : {"171m/38.5g", "8/2 cotton 250g", "1 1/2 oz, 80 yd", "400m/100g"}) {
        CHECK(several_skeins(text).one == text);
        CHECK(several_skeins(text).count == 1);
    }
}

TEST_CASE("several skeins: whole in one cell of a sheet") {
    const auto read =
        read_batch_csv("name,length,weight\na,3 x 110 yds @ 57g,\nb,90yd/50g,\n", "s");
    REQUIRE(read.skeins.size() == 4);
    CHECK(read.skeins[2].name.text == "a 3");
    CHECK_THROWS_WITH_AS(read_batch_csv("name,length,weight\na,5 skeins 400m,\n", "s"),
                         doctest::Contains("s:2: length: "), Refused);
}
