#include "engine/allocation/ideal.hpp"

#include <doctest/doctest.h>

#include "engine/allocation/allocate.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

TEST_CASE("ideal: one skein and one piece, by hand") {
    Problem p;
    p.skeins = {{"A", 10'000, 0}};
    p.pieces = {{"scarf", 5'000, 5'000'000, {{1'000, 400}}, 0, 0, false}};
    const Model model(p);
    Decisions root(model);
    REQUIRE(conclude(model, root));
    const Ideal ideal(model, root);
    CHECK(ideal.worth() == 5'400'000);  // yarn is left over, so it is worth nothing
    CHECK(ideal.at_most({1, 1}) == 5'400'000);
    CHECK(ideal.shortfall({1, 1}, 5'000'000) == 400'000);
}

TEST_CASE("ideal: no plan is worth more, and no group promises more than at a glance") {
    int glances = 0, nevers = 0;
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        CAPTURE(seed);
        const auto problem = random_problem(1 + seed % 5, 1 + seed / 5 % 5, seed);
        const Model model(problem);
        Decisions root(model);
        if (!conclude(model, root)) continue;
        const Ideal ideal(model, root);
        const auto best = allocate(problem);
        if (best.found()) CHECK(ideal.worth() >= best.list.worth);
        GroupPromise promise(model, root);
        for (Set s = 1; s <= all(model.skeins); ++s)
            for (Set p = 1; p <= all(model.pieces); ++p) {
                const auto at_most = ideal.at_most({s, p}), worth = promise.of({s, p});
                ++glances;
                if (at_most <= never / 2) {
                    ++nevers;
                    continue;  // it may be in no plan, whatever it promises
                }
                CHECK(at_most >= worth);
                if (worth > never / 2) CHECK(ideal.shortfall({s, p}, worth) >= 0);
            }
    }
    CHECK(glances > 10'000);
    CHECK(nevers > glances / 4);
}

TEST_CASE("ideal: the reserve may lie in a skein that stays whole") {
    Problem p;
    p.skeins = {{"A", 5'030, 0}, {"B", 2'000, 3'000'000}};
    p.pieces = {{"scarf", 5'000, 5'000'000, {{1'000, 900}}, 0, 0, false}};
    p.reserve = 1'000;
    const Model model(p);
    Decisions root(model);
    REQUIRE(conclude(model, root));
    const auto best = allocate(p);
    REQUIRE(best.outcome == Allocation::Outcome::proven_best);
    CHECK(best.list.worth == 8'000'000);  // the scarf from A, and the bonus of B
    CHECK(Ideal(model, root).worth() >= best.list.worth);
}
