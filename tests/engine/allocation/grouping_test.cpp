#include "engine/allocation/grouping.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

#include "engine/allocation/allocate.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

namespace {

constexpr Points point = 1'000'000;

// Tail 0.30 m and shortest 2 m as usual; a cowl of 100 m and mitts of 50 m.
Problem cowl_and_mitts(std::vector<Cm> skeins) {
    Problem out;
    for (const auto length : skeins) out.skeins.push_back({"", length, 0});
    out.pieces = {{"cowl", 10'000, 10 * point, {{1'000, 500}}, 2 * point, 3, false},
                  {"mitts", 5'000, 5 * point, {}, 3 * point, 1, false}};
    return out;
}

struct Looked {
    explicit Looked(Problem p) : problem(std::move(p)), model(problem), root(model) {
        possible = conclude(model, root);
    }
    Problem problem;
    Model model;
    Decisions root;
    bool possible = false;
};

Points promise(const Problem& problem, Set skeins, Set pieces) {
    const Looked at(problem);
    REQUIRE(at.possible);
    return GroupPromise(at.model, at.root).of({skeins, pieces});
}

Set set(std::initializer_list<unsigned> members) {
    Set out = 0;
    for (const auto x : members) out |= Set{1} << x;
    return out;
}

}  // namespace

TEST_CASE("grouping: what a group promises, by hand") {
    // Both in three skeins of 60 m: 150 m and two tails for the pieces, two joins, the cheaper
    // ones, and a tail for each: 180 - 150 - 4 x 0.30 = 28.8 m left, of which the cowl takes 10.
    const auto three = cowl_and_mitts({6'000, 6'000, 6'000});
    CHECK(promise(three, set({0, 1, 2}), set({0, 1})) == 15 * point - 2 * 2 * point + 1'000 * 500);
    // The cowl from two: one join; 120 - 100 - 0.60 = 19.4 m, of which it takes 10.
    CHECK(promise(three, set({0, 1}), set({0})) == 10 * point - 2 * point + 1'000 * 500);
    // One skein does not hold it; and the mitts need no second one, nor can they take a third.
    CHECK(promise(three, set({0}), set({0})) == never);
    CHECK(promise(three, set({0}), set({1})) == 5 * point);
    CHECK(promise(three, set({0, 1}), set({1})) == 5 * point - 3 * point);
    CHECK(promise(three, set({0, 1, 2}), set({1})) == never);
}

TEST_CASE("grouping: metres left stretch a piece only as far as they go") {
    const auto two = cowl_and_mitts({6'000, 4'560});  // 105.6 m: 5 m for the cowl beside two tails
    CHECK(promise(two, set({0, 1}), set({0})) == 10 * point - 2 * point + 500 * 500);
}

TEST_CASE("grouping: a join more than the piece needs costs its tail too") {
    // One skein holds the cowl; with the other 105.05 - 100 - 2 x 0.30 = 4.45 m are left for it.
    const auto two = cowl_and_mitts({10'100, 405});
    CHECK(promise(two, set({0, 1}), set({0})) == 10 * point - 2 * point + 445 * 500);
}

TEST_CASE("grouping: where every skein is dear, so are the metres that stretch") {
    auto two = cowl_and_mitts({6'000, 6'000});
    two.mismatch = {{100, 0}, {100, 0}};
    CHECK(promise(two, set({0, 1}), set({0})) ==
          10 * point - 2 * point - 10'060 * 100 + 1'000 * (500 - 100));
}

TEST_CASE("grouping: a dear skein is paid for by the metres it must give") {
    auto two = cowl_and_mitts({6'000, 6'000});
    two.mismatch = {{0, 0}, {100, 0}};
    // 100.6 m for the cowl: 60 m from the cheap skein, 40.6 m from the other at a point for 100 m;
    // the second tail is in the 40.6 m only once, as the cheap one's.
    const auto worth = promise(two, set({0, 1}), set({0}));
    CHECK(worth == 10 * point - 2 * point + 1'000 * 500 - 4'060 * 100);
}

TEST_CASE("grouping: no plan is worth more than the first bound") {
    int close = 0, all_of_them = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        CAPTURE(seed);
        const Looked at(random_problem(1 + seed % 5, 1 + seed / 5 % 5, seed));
        if (!at.possible) continue;
        const auto best = allocate(at.problem);
        const auto bound = Grouping(at.problem, at.model, at.root).bound();
        if (!bound) {
            CHECK(best.outcome == Allocation::Outcome::impossible);
            continue;
        }
        if (best.found()) CHECK(*bound >= best.list.worth);
        ++all_of_them;
        close += best.found() && *bound == best.list.worth ? 1 : 0;
    }
    MESSAGE(close << " of " << all_of_them << " are worth just as much");
    CHECK(all_of_them > 100);
}

TEST_CASE("grouping: worked out to the end, the division is the best plan") {
    int finished = 0;
    for (std::uint64_t seed = 1; seed <= 80; ++seed) {
        CAPTURE(seed);
        const Looked at(random_problem(1 + seed % 4, 1 + seed / 4 % 4, seed));
        if (!at.possible) continue;
        const auto best = allocate(at.problem);
        REQUIRE((best.outcome == Allocation::Outcome::proven_best ||
                 best.outcome == Allocation::Outcome::impossible));
        Grouping grouping(at.problem, at.model, at.root);
        std::optional<CutList> plan;
        for (int round = 0; round < 400 && !grouping.finished(); ++round)
            plan = grouping.work_out();
        REQUIRE(grouping.finished());
        ++finished;
        CHECK(grouping.bound().has_value() == best.found());
        if (!best.found() || !plan) continue;
        CHECK(*grouping.bound() == best.list.worth);
        CHECK(plan->worth == best.list.worth);
    }
    CHECK(finished > 50);
}

TEST_CASE("grouping: a pair from the same skeins is one group, or one of them is left out") {
    Problem pair;
    pair.tail = 0;
    pair.skeins = {{"A", 5'000, 0}, {"B", 5'000, 0}};
    pair.pieces = {{"one mitt", 5'000, 7 * point, {}, 0, 0, false},
                   {"the other", 5'000, 5 * point, {}, 0, 0, false}};
    pair.same = {{0, 1}};
    const Looked at(pair);
    CHECK(Grouping(at.problem, at.model, at.root).bound() == 7 * point);
    auto both = pair;
    both.pieces[0].required = both.pieces[1].required = true;
    const Looked never_both(both);
    if (never_both.possible)
        CHECK(!Grouping(never_both.problem, never_both.model, never_both.root).bound());
}

TEST_CASE("grouping: more than it can hold is refused") {
    const Looked at(random_problem(12, 12, 1));
    CHECK_THROWS_AS(Grouping(at.problem, at.model, at.root), std::length_error);
    CHECK_FALSE(Grouping::can_hold(at.model));  // so that no search ever asks
}

// The best worth is GLPK 5.0's, with cuts, of the same problem as an LP file.
TEST_CASE("grouping: a tight split of eight skeins is proven at once") {
    Problem p;
    for (Cm i = 1; i <= 8; ++i)
        p.skeins.push_back({"", 6'000 + 1'700 * i, 500 * (6'000 + 1'700 * i)});
    const auto add = [&](const char* name, Cm least, Points value, int joins, bool required,
                         std::vector<Stretch> stretch) {
        p.pieces.push_back(
            {name, least, value, std::move(stretch), joins > 0 ? 4 * point : 0, joins, required});
    };
    add("knitted sample", 1441, 0, 0, true,
        {{106, 6177}, {114, 5405}, {124, 4678}, {134, 4076}, {145, 3549}, {157, 3089}});
    add("triangle shawl", 42803, 428030000, 4, true,
        {{12926, 6667}, {14628, 5833}, {16328, 5000}, {18029, 4167}, {19730, 3333}, {21431, 2500}});
    add("watch cap", 16716, 146073303, 4, false,
        {{511, 5826}, {519, 5097}, {525, 4369}, {532, 3641}, {539, 2913}, {546, 2185}});
    add("plain socks", 31344, 275127523, 4, false,
        {{1881, 5852}, {1936, 5120}, {1992, 4389}, {2047, 3657}, {2103, 2926}, {2159, 2194}});
    add("mittens", 16650, 146346733, 4, false,
        {{837, 5860}, {856, 5127}, {877, 4395}, {898, 3662}, {918, 2930}, {938, 2197}});
    add("woven scarf", 46647, 390296059, 4, false,
        {{7284, 5578}, {7806, 4881}, {8330, 4184}, {8853, 3486}, {9375, 2789}, {9899, 2092}});
    const auto answer = allocate(p);
    CHECK(answer.outcome == Allocation::Outcome::proven_best);
    CHECK(answer.list.worth / 1'000 == 953'441);
    CHECK(answer.nodes < 1'000);
}
