#include "engine/lay/repeat.hpp"

#include <doctest/doctest.h>

using gristwright::lay::within;

TEST_CASE("a place beyond a repeat is the same place one repeat further, to either side") {
    for (const int repeat : {1, 2, 3, 8})
        for (int place = -20; place <= 20; ++place) {
            CAPTURE(repeat);
            CAPTURE(place);
            const int at = within(place, repeat);
            CHECK(at >= 0);
            CHECK(at < repeat);
            CHECK((place - at) % repeat == 0);
            CHECK(within(place, static_cast<std::size_t>(repeat)) == static_cast<std::size_t>(at));
        }
    CHECK(within(-1, 4) == 3);
    CHECK(within(4, 4) == 0);
}
