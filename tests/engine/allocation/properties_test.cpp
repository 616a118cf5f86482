// What must hold of every answer, whatever the problem: seeded random ones, and single rules put to
// the checker by tampering with good plans.
#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <stdexcept>
#include <vector>

#include "engine/allocation/allocate.hpp"
#include "engine/allocation/checker.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

namespace {

constexpr std::uint64_t seeds = 40;

Problem small(std::uint64_t seed) { return random_problem(1 + seed % 4, 1 + seed % 5, seed + 500); }

std::vector<std::size_t> shuffled(std::size_t n, std::mt19937_64& random) {
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), 0);
    for (std::size_t k = n; k > 1; --k) std::swap(order[k - 1], order[random() % k]);
    return order;
}

Problem reordered(const Problem& p, std::mt19937_64& random) {
    auto out = p;
    const auto skeins = shuffled(p.skeins.size(), random);
    const auto pieces = shuffled(p.pieces.size(), random);
    std::vector<std::size_t> now(pieces.size());
    for (std::size_t j = 0; j < pieces.size(); ++j) {
        out.pieces[j] = p.pieces[pieces[j]];
        now[pieces[j]] = j;
    }
    for (std::size_t i = 0; i < skeins.size(); ++i) {
        out.skeins[i] = p.skeins[skeins[i]];
        for (std::size_t j = 0; j < pieces.size(); ++j)
            out.mismatch[i][j] = p.mismatch[skeins[i]][pieces[j]];
    }
    for (auto* pairs : {&out.same, &out.different})
        for (auto& pair : *pairs) pair = {now[pair.first], now[pair.second]};
    return out;
}

// Every length ten times longer, every worth a centimetre a tenth: the same worth.
Problem in_millimetres(Problem p) {
    for (auto& skein : p.skeins) skein.length *= 10;
    for (auto& piece : p.pieces) {
        piece.least *= 10;
        for (auto& s : piece.stretch) s.length *= 10;
    }
    p.tail *= 10;
    p.shortest *= 10;
    p.reserve *= 10;
    return p;
}

// Slopes and mismatch that can be divided by ten.
Problem rounded_to_tens(Problem p) {
    for (auto& piece : p.pieces)
        for (auto& s : piece.stretch) s.per_cm -= s.per_cm % 10;
    for (auto& row : p.mismatch)
        for (auto& cost : row)
            if (cost) *cost -= *cost % 10;
    return p;
}

Problem cheaper_by_ten(Problem p) {
    for (auto& piece : p.pieces)
        for (auto& s : piece.stretch) s.per_cm /= 10;
    for (auto& row : p.mismatch)
        for (auto& cost : row)
            if (cost) *cost /= 10;
    return p;
}

Points best(const Problem& p) {
    const auto answer = allocate(p);
    REQUIRE(answer.outcome == Allocation::Outcome::proven_best);
    return answer.list.worth;
}

}  // namespace

TEST_CASE("more yarn never makes the best plan worth less") {
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        CAPTURE(seed);
        auto p = small(seed);
        if (!allocate(p).found()) continue;
        auto last = best(p);
        for (const Cm more : {1, 99, 1000, 5000}) {
            p.skeins[seed % p.skeins.size()].length += more;
            const auto next = best(p);
            CHECK(next >= last);
            last = next;
        }
    }
}

TEST_CASE("a wish more, a rule less or a cheaper join never make it worth less") {
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        CAPTURE(seed);
        const auto p = small(seed);
        if (!allocate(p).found()) continue;
        const auto worth = best(p);
        auto freer = p;
        freer.shortest /= 2;
        CHECK(best(freer) >= worth);
        freer.reserve /= 2;
        CHECK(best(freer) >= worth);
        freer.different.clear();
        CHECK(best(freer) >= worth);
        for (auto& piece : freer.pieces) piece.max_joins += 1, piece.join_cost /= 2;
        CHECK(best(freer) >= worth);
    }
}

TEST_CASE("the order of skeins and pieces changes nothing of the worth") {
    std::mt19937_64 random(3);
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        CAPTURE(seed);
        const auto p = small(seed);
        const auto answer = allocate(p), other = allocate(reordered(p, random));
        CHECK(answer.outcome == other.outcome);
        CHECK(answer.list.worth == other.list.worth);
    }
}

TEST_CASE("the unit of length changes nothing of the worth") {
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        CAPTURE(seed);
        const auto p = rounded_to_tens(small(seed));
        const auto answer = allocate(p);
        if (!answer.found()) continue;
        CHECK(best(cheaper_by_ten(in_millimetres(p))) == answer.list.worth);
    }
}

TEST_CASE("the same problem gives the same cut list") {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const auto p = random_problem(6, 8, seed);
        const Effort little{500};
        const auto one = allocate(p, little), two = allocate(p, little);
        CHECK(one.nodes == two.nodes);
        CHECK(one.bound == two.bound);
        REQUIRE(one.list.cuts.size() == two.list.cuts.size());
        for (std::size_t c = 0; c < one.list.cuts.size(); ++c)
            CHECK(one.list.cuts[c].gross == two.list.cuts[c].gross);
    }
}

TEST_CASE("with little effort the bound still holds, and is not called proof") {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        CAPTURE(seed);
        const auto p = random_problem(5, 5, seed);
        const auto full = allocate(p);
        if (full.outcome != Allocation::Outcome::proven_best) continue;
        for (const int nodes : {1, 5, 30, 100}) {
            const auto quick = allocate(p, {nodes});
            if (!quick.found()) continue;
            CHECK(quick.bound >= full.list.worth);
            CHECK(quick.list.worth <= full.list.worth);
            if (quick.outcome == Allocation::Outcome::proven_best)
                CHECK(quick.list.worth == full.list.worth);
            else
                CHECK(quick.gap() >= 0);
        }
    }
}

TEST_CASE("told to stop, it stops with what it has") {
    std::stop_source source;
    source.request_stop();
    const auto p = random_problem(12, 12, 4);
    const auto answer = allocate(p, {1'000'000, 1, source.get_token(), {}});
    CHECK(answer.nodes < 10);
    if (answer.found()) CHECK(broken_rule(p, answer.list) == "");
}

TEST_CASE("the checker catches every way of tampering with a plan") {
    int tampered = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        CAPTURE(seed);
        const auto p = small(seed);
        const auto good = allocate(p);
        if (!good.found() || good.list.cuts.empty()) continue;
        CHECK(broken_rule(p, good.list) == "");
        const auto caught = [&](auto tamper) {
            auto bad = good.list;
            tamper(bad);
            ++tampered;
            CHECK(broken_rule(p, bad) != "");
        };
        caught([](auto& l) { l.worth += 1; });
        caught([](auto& l) { l.worth -= 1; });
        caught([](auto& l) { l.cuts[0].gross = 0; });
        caught([](auto& l) { l.cuts[0].gross = -5; });
        caught([](auto& l) { l.cuts[0].gross = 1; });
        caught([](auto& l) { l.cuts[0].gross += 10'000'000; });
        caught([](auto& l) { l.cuts.push_back(l.cuts[0]); });
        caught([&](auto& l) { l.cuts[0].skein = p.skeins.size(); });
        caught([&](auto& l) { l.cuts[0].piece = p.pieces.size(); });
        if (p.reserve > 0) caught([](auto& l) { l.reserve.reset(); });
        if (p.reserve > 0) caught([&](auto& l) { l.reserve = p.skeins.size(); });
    }
    CHECK(tampered > 200);
}

TEST_CASE("the checker knows each rule") {
    Problem p;
    p.skeins = {{"A", 5000, 0}, {"B", 5000, 0}};
    p.pieces = {{"hat", 3000, 5'000'000, {{500, 100}}, 1'000'000, 1, false},
                {"mitts", 1000, 2'000'000, {}, 0, 0, false}};
    const auto said = [&](std::vector<Cut> cuts, std::optional<std::size_t> reserve = {}) {
        CutList list{std::move(cuts), reserve, 0};
        list.worth = worth(p, list);
        return broken_rule(p, list);
    };
    CHECK(said({{0, 0, 3030}}) == "");
    CHECK(said({{0, 0, 3530}}) == "");
    CHECK(said({{0, 0, 3029}}) != "");               // too short
    CHECK(said({{0, 0, 3531}}) != "");               // too long
    CHECK(said({{0, 0, 2830}, {1, 0, 230}}) == "");  // one join
    CHECK(said({{0, 0, 2831}, {1, 0, 229}}) != "");  // too short a segment
    CHECK(said({{0, 1, 530}, {1, 1, 530}}) != "");   // no joins
    CHECK(said({{0, 0, 3030}, {0, 1, 1030}}, 1) == "");
    p.reserve = 1000;
    CHECK(said({{0, 0, 3030}, {0, 1, 1030}}, 1) == "");
    CHECK(said({{0, 0, 3030}, {0, 1, 1030}}, 0) != "");  // the reserve is not there
    p.reserve = 0;
    p.different = {{0, 1}};
    CHECK(said({{0, 0, 3030}, {0, 1, 1030}}) != "");
    CHECK(said({{0, 0, 3030}, {1, 1, 1030}}) == "");
    p.different.clear();
    p.same = {{0, 1}};
    CHECK(said({{0, 0, 3030}, {1, 1, 1030}}) != "");
    p.same.clear();
    p.mismatch = {{Points{0}, {}}, {Points{0}, Points{0}}};
    CHECK(said({{0, 1, 1030}}) != "");
    CHECK(said({{1, 1, 1030}}) == "");
    p.pieces[0].required = true;
    CHECK(said({{1, 1, 1030}}) != "");
}

TEST_CASE("no problem at all is refused") {
    Problem good;
    good.skeins = {{"A", 5000, 0}};
    good.pieces = {{"hat", 3000, 5'000'000, {{500, 100}}, 0, 0, false}};
    CHECK_NOTHROW(check(good));
    const auto refused = [&](auto spoil) {
        auto bad = good;
        spoil(bad);
        CHECK_THROWS_AS(allocate(bad), std::invalid_argument);
    };
    refused([](Problem& p) { p.skeins[0].length = -1; });
    refused([](Problem& p) { p.skeins[0].bonus = -1; });
    refused([](Problem& p) { p.pieces[0].least = 0; });
    refused([](Problem& p) { p.pieces[0].value = -1; });
    refused([](Problem& p) { p.pieces[0].stretch.push_back({500, 101}); });
    refused([](Problem& p) { p.tail = -1; });
    refused([](Problem& p) { p.mismatch = {{}}; });
    refused([](Problem& p) { p.same = {{0, 1}}; });
    refused([](Problem& p) { p.pieces[0].stretch[0].per_cm = 50'000'000; });  // would overflow
    refused([](Problem& p) { p.pieces[0].value = 900'000'000'000; });
}

TEST_CASE("a large problem in which the search finds nothing is still given a plan") {
    const auto problem = random_problem(40, 20, 340);
    constexpr int first_look = 226;  // nodes for a problem of this size; none are left to wish with
    REQUIRE_FALSE(allocate(problem, {first_look}).found());
    const auto answer = allocate(problem, {2 * first_look});
    REQUIRE(answer.found());
    CHECK(broken_rule(problem, answer.list) == "");
    CHECK(answer.bound >= answer.list.worth);
}

TEST_CASE("no more nodes are looked at than asked for, but for the answers to one last question") {
    int cut_short = 0;
    for (const auto& [skeins, pieces] :
         {std::pair<std::size_t, std::size_t>{8, 6}, {13, 8}, {40, 20}})
        for (const int nodes : {1, 30, 70, 200})
            for (std::uint64_t seed = 1; seed <= 6; ++seed) {
                CAPTURE(seed);
                CAPTURE(nodes);
                const auto answer = allocate(random_problem(skeins, pieces, seed), {nodes});
                CHECK(answer.nodes <= nodes + static_cast<int>(skeins) + 1);
                cut_short += answer.outcome == Allocation::Outcome::best_found ? 1 : 0;
            }
    CHECK(cut_short > 20);
}

TEST_CASE("twice the effort looks at more, and is worth no less") {
    const auto problem = random_problem(40, 20, 17);
    const auto some = allocate(problem, {-1, 0.2}), twice = allocate(problem, {-1, 0.4});
    REQUIRE(some.outcome == Allocation::Outcome::best_found);
    CHECK(twice.nodes > some.nodes);
    CHECK(twice.list.worth >= some.list.worth);
    CHECK(twice.bound <= some.bound);
}

TEST_CASE("who watches is told how far it is, and may stop it there") {
    const auto problem = random_problem(14, 9, 3);
    std::stop_source source;
    Effort effort;
    effort.stop = source.get_token();
    int told = 0, last = -1;
    effort.watch = [&](const Progress& at) {
        CHECK(at.nodes >= last);
        CHECK(at.nodes <= at.of);
        last = at.nodes;
        if (++told == 20) source.request_stop();
    };
    const auto answer = allocate(problem, effort);
    CHECK(told == 20);
    CHECK(answer.found());
    CHECK(broken_rule(problem, answer.list) == "");
}
