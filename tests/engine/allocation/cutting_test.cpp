#include "engine/allocation/cutting.hpp"

#include <doctest/doctest.h>

#include "engine/allocation/allocate.hpp"
#include "engine/allocation/flow_bound.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

namespace {

constexpr Points nothing = 0;

struct Solved {
    Problem problem;
    Allocation best;
};

// Small enough that the search proves them before it ever asks for this bound.
std::vector<Solved> solved() {
    std::vector<Solved> out;
    for (std::uint64_t seed = 1; out.size() < 60; ++seed) {
        Solved one{random_problem(2 + seed % 4, 2 + seed % 5, seed), {}};
        one.best = allocate(one.problem);
        if (one.best.outcome == Allocation::Outcome::proven_best) out.push_back(std::move(one));
    }
    return out;
}

bool allows(const Decisions& d, const CutList& list, std::size_t pieces) {
    for (std::size_t j = 0; j < pieces; ++j)
        if (d.made[j] == (list.makes(j) ? Say::no : Say::yes)) return false;
    for (const auto& cut : list.cuts)
        if (d.opened[cut.skein] == Say::no || d.pair(cut.skein, cut.piece) == Say::no) return false;
    for (std::size_t i = 0; i < d.opened.size(); ++i)
        if (d.opened[i] == Say::yes && list.taken_from(i) == 0) return false;
    return true;
}

}  // namespace

TEST_CASE("cutting: once it is said what is made, the bound lies nearer the best than the flow's") {
    double flows = 0, cuttings = 0;
    for (const auto& [problem, best] : solved()) {
        const Model model(problem);
        Decisions d(model);
        for (std::size_t j = 0; j < problem.pieces.size(); ++j)
            d.made[j] = best.list.makes(j) ? Say::yes : Say::no;
        REQUIRE(conclude(model, d));
        FlowBound flow(model);
        Cutting cutting(model);
        const auto by_flow = flow.bound(d);
        REQUIRE(by_flow);
        const auto bound = cutting.bound(d, nothing);
        CHECK(bound >= best.list.worth);
        flows += static_cast<double>(*by_flow - best.list.worth);
        cuttings += static_cast<double>(std::min(bound, *by_flow) - best.list.worth);
    }
    MESSAGE("what the flow leaves open, the patterns leave by ", 100 * cuttings / flows, " %");
    CHECK(cuttings < 0.8 * flows);
}

TEST_CASE("cutting: what it decides never shuts out the best plan") {
    for (const auto& [problem, best] : solved()) {
        const Model model(problem);
        Decisions d(model);
        REQUIRE(conclude(model, d));
        Cutting cutting(model);
        cutting.learn(best.list);
        cutting.bound(d, best.list.worth - 1);
        cutting.narrow(d, best.list.worth - 1);
        REQUIRE(conclude(model, d));
        // Another plan of the same worth may be the one that is left; then the flow still finds it.
        if (!allows(d, best.list, problem.pieces.size())) {
            FlowBound flow(model);
            const auto bound = flow.bound(d);
            REQUIRE(bound);
            CHECK(*bound >= best.list.worth);
        }
    }
}
