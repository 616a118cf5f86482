#include "engine/allocation/why.hpp"

#include <doctest/doctest.h>

#include <numeric>

#include "engine/allocation/limit.hpp"
#include "engine/allocation/possible.hpp"
#include "tests/engine/allocation/random_problem.hpp"

using namespace gristwright::allocation;

namespace {

Piece wish(const char* name, Cm least, Points points, int joins = 0, Points join_cost = 0) {
    return {name, least, points * 1'000'000, {}, join_cost * 1'000'000, joins, false};
}

Limit limit(const Problem& p, std::size_t piece = 0) {
    auto forced = p;
    forced.pieces.at(piece).required = true;
    const auto answer = allocate(p);
    Looks looks(2'000, 20'000);
    const bool can_be_made = looks.possible(forced);
    return Limits(p, answer, looks).binding(piece, can_be_made);
}

// A 100 m with bonus 9, B 60, C 40; mitts 55 m worth 8, cowl 50 m worth 7, one join at 1.
Problem bonus_beats_a_piece() {
    Problem p;
    p.skeins = {{"A", 10000, 9'000'000}, {"B", 6000, 0}, {"C", 4000, 0}};
    p.pieces = {wish("mitts", 5500, 8), wish("cowl", 5000, 7, 1, 1)};
    return p;
}

}  // namespace

TEST_CASE("the worked case: a skein whole is worth more than the cowl") {
    const auto p = bonus_beats_a_piece();
    const auto answer = allocate(p);
    const auto said = unmet(p, answer);
    REQUIRE(said.size() == 1);
    CHECK(said[0].piece == 1);
    CHECK(said[0].instead);
    CHECK(said[0].price == 1'000'000);  // the cowl alone from B, A whole: 16 instead of 17
    CHECK(limit(p, 1) == Limit::whole_skein);
    CHECK(worth_of_a_metre(p, answer) == std::vector<Points>{0, 0, 0});
}

TEST_CASE("a metre more is worth what the last stretch is worth") {
    Problem p;
    p.skeins = {{"A", 6000, 0}};
    p.reserve = 800;
    p.pieces = {{"knit", 1000, 5'000'000, {{1000, 4000}, {1000, 1000}}, 0, 0, false},
                {"woven", 1500, 6'000'000, {{1000, 3000}, {1500, 2000}}, 0, 0, false}};
    CHECK(worth_of_a_metre(p, allocate(p)) == std::vector<Points>{100 * 2000});
}

TEST_CASE("what makes a second piece possible beside the first, and its price without") {
    Problem p;
    p.skeins = {{"A", 5000, 0}};
    p.pieces = {wish("hat", 3500, 10), wish("cuffs", 2000, 6)};
    const auto said = unmet(p, allocate(p)).at(0);
    CHECK(said.price == 4'000'000);
    CHECK(said.loses == std::vector<std::size_t>{0});
    REQUIRE(said.beside);
    CHECK(said.beside->length == 560);  // 35.3 + 20.3 m - 50 m
    CHECK(limit(p, 1) == Limit::worth);
}

TEST_CASE("where no plan exists, the fewest metres that would make one") {
    Problem p;
    p.skeins = {{"A", 2000, 0}, {"B", 1500, 0}};
    p.pieces = {wish("back", 3000, 9)};
    p.pieces[0].required = true;
    const auto more = least_more(p);
    REQUIRE(more);
    CHECK(more->skein == 0);
    CHECK(more->length == 1030);
    CHECK_FALSE(least_more(p, 1029));
}

TEST_CASE("the rule that binds a wish is the one that would let it in") {
    Problem p;
    p.skeins = {{"A", 4000, 0}, {"B", 4000, 0}};
    p.pieces = {wish("shawl", 6000, 9)};
    CHECK(limit(p) == Limit::joins);
    p.pieces = {wish("shawl", 9000, 9, 1)};
    CHECK(limit(p) == Limit::metres);
    p.pieces = {wish("shawl", 7900, 9, 1)};
    p.reserve = 500;
    CHECK(limit(p) == Limit::reserve);
    p.reserve = 0;
    p.pieces = {wish("shawl", 3900, 9)};
    p.mismatch = {{std::nullopt}, {std::nullopt}};
    CHECK(limit(p) == Limit::relation);
    p.mismatch.clear();
    p.skeins = {{"A", 4900, 0}, {"B", 220, 0}};
    p.pieces = {wish("shawl", 5000, 9, 1)};
    CHECK(limit(p) == Limit::shortest);
    p.skeins = {{"A", 2000, 0}, {"B", 2000, 0}, {"C", 170, 0}};
    p.pieces = {wish("shawl", 4050, 9, 1)};
    CHECK(limit(p) == Limit::cut_up);  // a join more and a shorter segment
}

TEST_CASE(
    "over random problems the length said to be lacking is enough, and a centimetre less is not") {
    int asked = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        auto p = random_problem(3, 4, seed);
        if (!allocate(p).found()) continue;
        for (auto& piece : p.pieces) piece.required = true;
        const auto more = least_more(p);
        if (!more || allocate(p).found()) continue;
        ++asked;
        p.skeins[more->skein].length += more->length;
        CHECK(allocate(p).found());
        p.skeins[more->skein].length -= 1;
        CHECK_FALSE(allocate(p).found());
    }
    CHECK(asked >= 10);
}
