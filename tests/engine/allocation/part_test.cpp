#include "engine/allocation/part.hpp"

#include <doctest/doctest.h>

#include "engine/allocation/checker.hpp"

using namespace gristwright::allocation;

namespace {

Problem whole() {
    Problem out;
    out.reserve = 500;
    out.skeins = {{"A", 3'000, 10}, {"B", 4'000, 20}, {"C", 5'000, 30}};
    out.pieces = {{"hat", 1'000, 1, {}, 0, 0, false},
                  {"cowl", 2'000, 2, {{100, 5}}, 3, 1, false},
                  {"mitts", 1'500, 3, {}, 0, 0, false}};
    out.mismatch = {{1, 2, 3}, {4, 5, std::nullopt}, {7, 8, 9}};
    out.same = {{0, 2}, {1, 2}};
    out.different = {{0, 1}};
    return out;
}

}  // namespace

TEST_CASE("part: skeins and pieces stand in its own order, relations to others are dropped") {
    const Part part{{2, 1}, {2, 1}, true};
    const auto p = part.problem(whole());
    REQUIRE(p.skeins.size() == 2);
    CHECK(p.skeins[0].name == "C");
    CHECK(p.skeins[1].bonus == 20);
    CHECK(p.pieces[0].name == "mitts");
    CHECK(p.pieces[1].stretch.size() == 1);
    CHECK(p.mismatch[0][0] == 9);
    CHECK(!p.mismatch[1][0]);
    CHECK(p.mismatch[1][1] == 5);
    CHECK(p.reserve == 500);
    REQUIRE(p.same.size() == 1);
    CHECK(p.same[0].first == 1);
    CHECK(p.same[0].second == 0);
    CHECK(p.different.empty());
    CHECK(Part{{0}, {0}, false}.problem(whole()).reserve == 0);
}

TEST_CASE("part: where nothing is said of skeins and pieces, they may meet for nothing") {
    auto free = whole();
    free.mismatch.clear();
    CHECK(Part{{0, 1}, {2}, false}.problem(free).mismatch[1][0] == 0);
}

TEST_CASE("part: its cuts go there and back") {
    CutList list;
    list.cuts = {{0, 0, 1'030}, {1, 1, 1'100}, {2, 1, 960}};
    list.reserve = 2;
    const Part part{{2, 1}, {1}, true};
    auto inside = part.from_whole(list);
    REQUIRE(inside.cuts.size() == 2);
    CHECK(inside.cuts[0].skein == 1);
    CHECK(inside.cuts[0].piece == 0);
    CHECK(inside.reserve == 0);
    CutList back;
    back.cuts = {{0, 0, 1'030}};
    part.add_to_whole(inside, back);
    CHECK(back.reserve == 2);
    REQUIRE(back.cuts.size() == 3);
    CHECK(back.cuts[1].skein == 1);
    CHECK(back.cuts[1].piece == 1);
    CHECK(back.cuts[2].gross == 960);
}
