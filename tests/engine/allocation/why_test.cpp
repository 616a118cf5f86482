// Reasons for what is not made, on instances that are checked by hand.
#include "engine/allocation/why.hpp"

#include <doctest/doctest.h>

using namespace gristwright::allocation;

namespace {

Piece whole(const char* name, Cm least, double points) {
    return {name, least, static_cast<Points>(points * 1e6), {}, 0, 0, false};
}

}  // namespace

TEST_CASE("one 50 m skein, a 35 m hat or 20 m cuffs: 5.6 m more would make both") {
    Problem p;
    p.skeins = {{"A", 5000, 0}};
    p.pieces = {whole("hat", 3500, 10), whole("cuffs", 2000, 6)};
    const auto answer = allocate(p);
    CHECK(answer.list.worth == 10'000'000);
    const auto reasons = unmet(p, answer);
    REQUIRE(reasons.size() == 1);
    CHECK(reasons[0].piece == 1);
    REQUIRE(reasons[0].beside);
    CHECK(reasons[0].beside->length == 560);
    CHECK(reasons[0].instead);
    CHECK(reasons[0].price == 4'000'000);
    CHECK(reasons[0].loses == std::vector<std::size_t>{0});
}

TEST_CASE("a required 30 m piece, skeins of 20 and 15 m: 10.3 m short in the longer") {
    Problem p;
    p.skeins = {{"A", 2000, 0}, {"B", 1500, 0}};
    p.pieces = {whole("swatch", 3000, 1)};
    p.pieces[0].required = true;
    CHECK(allocate(p).outcome == Allocation::Outcome::impossible);
    const auto more = least_more(p);
    REQUIRE(more);
    CHECK(more->skein == 0);
    CHECK(more->length == 1030);
}

TEST_CASE("a metre is worth what the next stretch is worth, and nothing where nothing grows") {
    Problem p;
    p.skeins = {{"A", 3000, 0}, {"B", 1000, 0}};
    p.pieces = {{"swatch", 1000, 1'000'000, {{5000, 2000}}, 0, 0, false}};
    p.mismatch = {{0}, {std::nullopt}};
    const auto answer = allocate(p);
    const auto worth = worth_of_a_metre(p, answer);
    CHECK(worth[0] == 200'000);
    CHECK(worth[1] == 0);
}

TEST_CASE("no length in one skein helps a piece that must differ from itself") {
    Problem p;
    p.skeins = {{"A", 3000, 0}};
    p.pieces = {whole("left", 1000, 5), whole("right", 1000, 5)};
    p.different = {{0, 1}};
    const auto answer = allocate(p);
    CHECK(answer.list.worth == 5'000'000);
    const auto reasons = unmet(p, answer);
    REQUIRE(reasons.size() == 1);
    CHECK(!reasons[0].beside);
}
