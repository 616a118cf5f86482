#include "engine/yarn/loft.hpp"

#include <doctest/doctest.h>

#include <initializer_list>

#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

TEST_CASE("packing of 222 tex wool by wraps, worked by hand from the cylinder") {
    const auto wool = grams_per_cm3(1.31);
    CHECK(packing_from_wraps(tex(222), wraps_per_inch(14), wool) == near(0.0656, 0.002));
    CHECK(packing_from_wraps(tex(222), wraps_per_inch(16), wool) == near(0.0856, 0.002));
    CHECK(packing_from_wraps(tex(222), wraps_per_inch(18), wool) == near(0.1084, 0.002));
}

TEST_CASE("specific volume and diameter are two views of one cylinder") {
    const auto volume = specific_volume(tex(222), wraps_per_inch(16));
    CHECK(volume == near(506707 / (222.0 * 256), 1e-4));
    CHECK(in_millimetres(diameter_from_volume(tex(222), volume)) == Approx(25.4 / 16));
    CHECK(in_millimetres(diameter_from_volume(tex(100), 1)) == near(0.35682, 1e-4));
}

TEST_CASE("published handspun: combed short-draw and carded long-draw skeins lie in their bands") {
    // handspun_skeins_open.csv rows A1, B1 (combed, short draw singles) and A8 (carded, long draw).
    const auto wool = grams_per_cm3(1.31);
    const auto packing = [&](double m, double g, double wpi) {
        return packing_from_wraps(grams(g) / metres(m), wraps_per_inch(wpi), wool);
    };
    const auto combed = usual_packing(Preparation::combed, Draw::short_draw);
    for (const double p : {packing(73.5, 28, 17.5), packing(502, 60, 33)}) {
        CHECK(p >= combed.low);
        CHECK(p <= combed.high);
    }
    const auto carded = usual_packing(Preparation::carded, Draw::long_draw);
    CHECK(packing(505.5, 28, 35.5) >= carded.low);
    CHECK(packing(505.5, 28, 35.5) <= carded.high);
    CHECK(usual_packing(Preparation::carded, Draw::unknown).high == 0);
}

TEST_CASE("margins: more ruler wrapped, a surer count; packing doubles the wraps' margin") {
    const WrapsReading one{wraps_per_inch(16), inches(1)}, two{wraps_per_inch(16), inches(2)};
    CHECK(wraps_margin(two) < wraps_margin(one));
    CHECK(packing_margin(0.02, 0.05) == near(0.10198, 1e-3));
}
