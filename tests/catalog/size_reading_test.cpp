// How big a thing is to be, beyond the table of ways to write it; and ages.
#include "catalog/typed/size_reading.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <string>

#include "catalog/text/words_of.hpp"
#include "catalog/typed/age_reading.hpp"
#include "engine/units/failure.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

TEST_CASE("sizes: one length is a length, two sides go with the idea") {
    for (int cm = 10; cm < 300; cm += 7) {
        CHECK(in_centimetres(*read_size(fmt::format("{} cm", cm), carried().spoken).length) ==
              doctest::Approx(cm));
        const auto sides = read_size(fmt::format("{} x {} cm", cm, cm + 5), carried().spoken);
        CHECK_FALSE(sides.length);
        CHECK(sides.words == fmt::format("{} x {} cm", cm, cm + 5));
    }
}

TEST_CASE("sizes: feet and inches by their signs are spelt out") {
    CHECK(in_centimetres(*read_size("5'6\"", carried().spoken).length) == doctest::Approx(167.64));
    CHECK(in_centimetres(*read_size("4 ft 6", carried().spoken).length) == doctest::Approx(137.16));
    CHECK(read_size("22\" head", carried().spoken).words == "22 in head");
    CHECK(read_size("5' wingspan", carried().spoken).words == "5 ft wingspan");
}

TEST_CASE("sizes: a remark is no size, whatever figures stand in it") {
    for (const char* text :
         {"see p. 42", "lot 7731", "20% off at the fair", "call at 4 m-f", "took 14 hrs",
          "S. likes this one", "huge", "-3cm", "bin 4, shelf 2", "soak 30 min at 40 C"}) {
        CAPTURE(text);
        CHECK_THROWS_AS(read_size(text, carried().spoken), Refused);
    }
}

TEST_CASE("sizes: a shoe's foot has no twelve inches") {
    CHECK(read_size("US mens 9 foot", carried().spoken).words == "size us mens 9");
    CHECK(read_size("shoe 42", carried().spoken).words == "size 42");
}

TEST_CASE("ages: the upper end, in months or in years") {
    for (int low = 0; low < 24; low += 3)
        for (const char* form : {"{}-{} mo", "{} to {} months", "baby {}-{} mths", "{}-{}mos"}) {
            const auto text = fmt::format(fmt::runtime(form), low, low + 3);
            CAPTURE(text);
            CHECK(as_age(text, false) == fmt::format("{} month old", low + 3));
        }
    CHECK(as_age("toddler 2T", false) == "2 year old");
    CHECK(as_age("aged 8-10 years", false) == "10 year old");
    CHECK(as_age("4 yrs.", false) == "4 year old");
}

TEST_CASE("ages: three metres are no months, but where no length can stand") {
    CHECK(as_age("3m", false).empty());
    CHECK(as_age("0-3m", true) == "3 month old");
    for (const char* text : {"4", "age", "150 cm", "12 in", "6 x 8", "10-8 years", "twins", ""}) {
        CAPTURE(text);
        CHECK(as_age(text, true).empty());
    }
}

TEST_CASE("words of a heading: letters of any alphabet, full stops between initials") {
    using Words = std::vector<std::string>;
    CHECK(words_of("Yarn-needed (yd)") == Words{"yarn", "needed", "yd"});
    CHECK(words_of("W.P.I.") == Words{"wpi"});
    CHECK(words_of("No. of skeins") == Words{"no", "of", "skeins"});
    CHECK(words_of("Länge in m") == Words{"länge", "in", "m"});
    CHECK(words_of(" ?? ").empty());
    CHECK(joined_words("What to make?") == "whattomake");
}
