#include "engine/suitability/standing.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/engine/invented.hpp"

using namespace gristwright;
using doctest::Approx;

TEST_CASE("the share beaten counts those that serve less well, ties not among them") {
    const std::vector<double> levels{0.1, 0.2, 0.4, 0.4, 0.9};
    CHECK(share_beaten(levels, 0.05) == 0);
    CHECK(share_beaten(levels, 0.1) == 0);
    CHECK(share_beaten(levels, 0.15) == Approx(0.125));
    CHECK(share_beaten(levels, 0.4) == Approx(0.5));
    CHECK(share_beaten(levels, 0.65) == Approx(0.875));
    CHECK(share_beaten(levels, 0.95) == 1);
    CHECK(share_beaten({1, 1, 1}, 1) == 0);
}

TEST_CASE("levels rise, and a yarn that serves better never beats fewer") {
    const auto fabrics = invented::fabrics();
    auto scarf = invented::knitted_scarf();
    scarf.wishes[static_cast<std::size_t>(Asked::softness)] = {0.8, 1};
    std::vector<YarnProfile> yarns;
    for (int i = 0; i <= 60; ++i) {
        yarns.push_back(invented::yarn(9000, 200));
        yarns.back().traits[static_cast<std::size_t>(TraitName::softness)].value = i / 60.0;
    }
    const auto levels = standing_levels(scarf, yarns, fabrics);
    REQUIRE(levels.size() == 41);
    CHECK(std::is_sorted(levels.begin(), levels.end()));
    double before = -1;
    for (double served = 0; served <= 1; served += 0.01) {
        const double beaten = share_beaten(levels, served);
        CHECK(beaten >= before);
        before = beaten;
    }
    CHECK(standing_levels(scarf, {}, fabrics).empty());
}
