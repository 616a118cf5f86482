// Every rule, broken on purpose in an otherwise sound plan: the checker must name it.
#include "engine/allocation/checker.hpp"

#include <doctest/doctest.h>

using namespace gristwright::allocation;

namespace {

bool names(const std::string& complaint, const char* part) {
    return complaint.find(part) != std::string::npos;
}

// Three skeins, a scarf that may be joined once, two socks and a required hat.
struct SoundPlan {
    Problem problem;
    CutList list;

    SoundPlan() {
        problem.skeins = {{"A", 6000, 0}, {"B", 6000, 500}, {"C", 9000, 900}};
        problem.pieces = {{"scarf", 5000, 9000, {{1000, 2}, {500, 1}}, 70, 1, false},
                          {"left", 1000, 300, {}, 0, 0, false},
                          {"right", 1000, 300, {}, 0, 0, false},
                          {"hat", 2000, 800, {}, 0, 0, true}};
        problem.mismatch.assign(3, std::vector<std::optional<Points>>(4, Points{0}));
        problem.mismatch[1][0] = 1;
        problem.mismatch[2][3] = {};
        problem.reserve = 700;
        problem.same = {{1, 2}};
        problem.different = {{0, 1}};
        list.cuts = {{0, 0, 3000}, {1, 0, 2560}, {2, 1, 1030}, {2, 2, 1030}, {0, 3, 2030}};
        list.reserve = 1;
        // 5500 cm of scarf: 9000 + 500 * 2 - 70 - 2560; socks and hat; B and C are opened.
        list.worth = 9000 + 1000 - 70 - 2560 + 300 + 300 + 800;
    }
    // What the checker says when the worth is counted anew, so that only the other rule is broken.
    std::string complaint() {
        list.worth = worth(problem, list);
        return broken_rule(problem, list);
    }
};

}  // namespace

TEST_CASE("a sound plan breaks no rule") {
    SoundPlan plan;
    CHECK(worth(plan.problem, plan.list) == plan.list.worth);
    CHECK(broken_rule(plan.problem, plan.list) == "");
}

TEST_CASE("a miscounted worth is caught") {
    SoundPlan plan;
    plan.list.worth += 1;
    CHECK(names(broken_rule(plan.problem, plan.list), "miscounted"));
}

TEST_CASE("lengths out of range are caught") {
    SoundPlan plan;
    plan.list.cuts[0].gross = 2499;  // with 2560 from B and two tails: 1 cm short
    CHECK(names(plan.complaint(), "scarf gets 4999 cm"));
    plan.list.cuts[0].gross = 4001;  // 1 cm more than all its stretches
    CHECK(names(plan.complaint(), "scarf gets 6501 cm"));
    plan.list.cuts[0].gross = 3971;  // the hat takes 2030 of A's 6000: 1 cm too much
    CHECK(names(plan.complaint(), "A gives more"));
    plan.list.cuts[0].gross = 3970;
    CHECK(plan.complaint() == "");
    plan.problem.skeins[1].length = 3259;  // 2560 and the reserve are 1 cm too much
    CHECK(names(plan.complaint(), "B gives more"));
}

TEST_CASE("joins are counted and measured") {
    SoundPlan plan;
    plan.list.cuts[0].gross = 3930;
    plan.list.cuts[1].gross = 229;
    plan.problem.pieces[0].least = 4000;
    CHECK(names(plan.complaint(), "too short a length from B"));
    plan.list.cuts[1].gross = 230;
    CHECK(plan.complaint() == "");
    plan.problem.pieces[0].max_joins = 0;
    CHECK(names(plan.complaint(), "scarf has too many joins"));
}

TEST_CASE("who may not meet does not") {
    SoundPlan plan;
    plan.list.cuts[4] = {2, 3, 2030};
    CHECK(names(broken_rule(plan.problem, plan.list), "hat may not come from C"));
}

TEST_CASE("relations hold") {
    SoundPlan plan;
    plan.list.cuts[3].skein = 1;
    CHECK(names(plan.complaint(), "from different skeins"));
    SoundPlan other;
    other.list.cuts[2].skein = other.list.cuts[3].skein = 1;
    CHECK(names(other.complaint(), "scarf and left share B"));
}

TEST_CASE("what must be there is") {
    SoundPlan plan;
    plan.list.cuts.pop_back();
    CHECK(names(plan.complaint(), "hat is required"));
    SoundPlan other;
    other.list.reserve.reset();
    CHECK(names(other.complaint(), "reserve is not kept"));
    other.list.reserve = 3;
    CHECK(names(broken_rule(other.problem, other.list), "reserve is in no skein"));
}

TEST_CASE("no cut stands twice, is of nothing or from nowhere") {
    SoundPlan plan;
    plan.list.cuts.push_back(plan.list.cuts[0]);
    CHECK(names(broken_rule(plan.problem, plan.list), "twice"));
    for (const auto& cut : {Cut{0, 1, 0}, Cut{0, 1, -5}, Cut{3, 1, 10}, Cut{0, 4, 10}}) {
        SoundPlan other;
        other.list.cuts.push_back(cut);
        CHECK(names(broken_rule(other.problem, other.list), "of nothing"));
    }
}
