#include "engine/yarn/loft.hpp"

#include <doctest/doctest.h>

#include <string>

#include "engine/yarn/constants.hpp"
#include "tests/cases.hpp"
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

TEST_CASE("published handspun: every combed short-draw and carded long-draw wool is in its band") {
    const auto wool = grams_per_cm3(1.31);
    std::size_t combed = 0, carded = 0;
    for (const auto& row : read_cases("handspun_skeins_open.csv")) {
        if (row.at("fibre") != "wool") continue;
        const auto grist =
            grams(std::stod(row.at("mass_g"))) / metres(std::stod(row.at("length_m")));
        const double p =
            packing_from_wraps(grist, wraps_per_inch(std::stod(row.at("wpi_loose"))), wool);
        const bool is_combed = row.at("preparation") == "combed" && row.at("draw") == "short";
        const bool is_carded = row.at("preparation") == "carded" && row.at("draw") == "long";
        if (!is_combed && !is_carded) continue;
        ++(is_combed ? combed : carded);
        const auto band = is_combed ? usual_packing(Preparation::combed, Draw::short_draw)
                                    : usual_packing(Preparation::carded, Draw::long_draw);
        CAPTURE(row.at("id"));
        CHECK(p >= band.low);
        CHECK(p <= band.high);
    }
    CHECK(combed == 4);
    CHECK(carded == 1);
    CHECK(usual_packing(Preparation::carded, Draw::unknown).high == 0);
}

TEST_CASE("washing lengthens no skein: the 90 % range of what is kept ends at the whole") {
    for (const auto& kept : {constants::washed_from_reel, constants::washed_from_rest}) {
        const Estimate<double> share{kept, band_spread(kept.low, kept.high)};
        CAPTURE(kept.name);
        CHECK(share.high() <= 1.005);
        CHECK(share.low() >= 0.98 * kept.low);
    }
}

TEST_CASE("margins: more ruler wrapped, a surer count, packing doubles the wraps' margin") {
    const WrapsReading one{wraps_per_inch(16), inches(1)}, two{wraps_per_inch(16), inches(2)};
    CHECK(wraps_margin(two) < wraps_margin(one));
    CHECK(packing_margin(0.02, 0.05) == near(0.10198, 1e-3));
}
