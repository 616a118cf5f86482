#include "engine/yarn/softness.hpp"

#include "engine/yarn/constants.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>

using namespace gristwright;

TEST_CASE("comfort factor of tested Shetland fleeces within 3 points (published fleece tests)") {
    struct Fleece {
        double mean, deviation, comfort;
    };
    for (const auto& [mean, deviation, comfort] :
         {Fleece{23.8, 5.1, 91.7}, Fleece{28.9, 5.4, 64.4}, Fleece{31.7, 6.2, 41.2},
          Fleece{30.7, 6.4, 48.2}}) {
        INFO("mean ", mean);
        const double ours = 100 * (1 - share_over_prickle(microns(mean), microns(deviation)));
        CHECK(std::abs(ours - comfort) < 3);
    }
}

TEST_CASE("fine wool does not prickle, coarse wool does, 25-30 micron lies between") {
    CHECK(share_over_prickle(microns(19)) < constants::felt_share);
    CHECK(share_over_prickle(microns(36)) > 0.5);
    CHECK(share_over_prickle(microns(25)) < share_over_prickle(microns(30)));
}
