// The heel's turn against the same worked stitch by stitch: the gusset of the socks stood for 26
// rounds of a square, and no turn stood for anything.
#include "engine/project/heel.hpp"

#include <doctest/doctest.h>

#include <array>
#include <vector>

using namespace gristwright;

namespace {

// Each row's stitches as they come off the needles; in the middle of the flap first.
struct ByHand {
    std::vector<int> rows;
    std::array<int, 2> left{};  // before the gap on either side
    std::size_t side = 0;

    // Two together across the gap, and one more.
    void row(int worked) {
        --left[side];
        if (left[side] > 0) --left[side], ++worked;
        rows.push_back(worked);
        side = 1 - side;
    }
};

ByHand by_hand(int flap) {
    ByHand out;
    const int knitted = flap / 2 + 2;
    out.left = {flap - knitted - 3, flap - knitted - 3};  // the same on both sides of the middle
    out.rows = {knitted + 2, 8};  // slip one, five, two together, one: eight
    while (out.left[0] > 0 || out.left[1] > 0) out.row(out.rows.back());
    return out;
}

}  // namespace

TEST_CASE("a heel's turn is what the same rows leave when worked one by one") {
    for (int flap = 12; flap <= 60; flap += 2) {
        INFO(flap);
        const auto hand = by_hand(flap);
        const auto turn = turned(flap);
        CHECK(turn.rows == static_cast<int>(hand.rows.size()));
        CHECK(turn.stitches == hand.rows.back());
        CHECK(turn.first == hand.rows[1]);
        CHECK(turn.stitches % 2 == 0);
    }
    // Figures that knitters know by heart; common practice, no source.
    CHECK(turned(28).stitches == 16);
    CHECK(turned(30).stitches == 18);
    CHECK(turned(32).stitches == 18);
}

TEST_CASE("the gusset closes: flap, turn and both sides become the foot again") {
    for (int flap = 12; flap <= 60; flap += 2)
        for (int rows = flap - 4; rows <= flap + 8; rows += 2) {
            const int taken = taken_up(rows), gusset = gusset_of(flap, rows);
            INFO(flap, " stitches, ", rows, " rows");
            CHECK(gusset % 2 == 0);
            CHECK(flap + gusset == turned(flap).stitches + 2 * taken);  // under the instep
        }
    CHECK(gusset_of(32, 32) == 18);  // of 64 stitches 82 are on the needles: eighteen rounds
    for (const int tiny : {4, 6, 8}) {
        CHECK(turned(tiny).stitches > 0);
        CHECK(gusset_of(tiny, 2) >= 0);
    }
}
