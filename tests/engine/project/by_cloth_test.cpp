#include "engine/project/by_cloth.hpp"

#include <doctest/doctest.h>

#include "tests/engine/invented.hpp"

using namespace gristwright;

namespace {

std::string craft_of(const PlanPiece& piece) {
    return by_cloth(
        piece, [](const KnitCloth& k) { return "knitted " + k.fabric->name; },
        [](const WovenCloth& w) { return "woven " + w.weave->name; });
}

}  // namespace

TEST_CASE("a piece is asked by its own cloth, one that has none is a mistake of ours") {
    const auto fabrics = invented::fabrics();
    const auto knitted = invented::knitted_scarf(), woven = invented::woven_scarf();
    const auto yarn = invented::yarn(900, 220);
    CHECK(craft_of(plan(knitted, yarn, fabrics, {}, {}).pieces[0]) == "knitted plain");
    CHECK(craft_of(plan(woven, yarn, fabrics, {}, {}).pieces[0]) == "woven tabby");
    CHECK_THROWS_AS(craft_of({}), std::logic_error);
}
