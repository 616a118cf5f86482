#include "engine/cloth/losses.hpp"

#include <doctest/doctest.h>

#include <initializer_list>

#include "tests/near.hpp"

using namespace gristwright;

namespace {

constexpr Finish finishes[] = {Finish::light, Finish::open_or_fulled, Finish::hard_fulled};

}  // namespace

// By hand: 9.5 % drawn in and 11.5 % of the rest washed out leave 0.905 x 0.885 = 0.801.
TEST_CASE("reed to washed is drawing in and then washing, one after the other") {
    CHECK(width_loss(Finish::light, 1).mid == near(1 - 0.801, 0.001));
    for (const auto finish : finishes)
        for (const double hair : {0.0, 0.5, 1.0}) {
            const auto whole = width_loss(finish, hair);
            const auto washed = washing_width_loss(finish, hair);
            CHECK((1 - whole.mid) == near((1 - draw_in().mid) * (1 - washed.mid), 1e-9));
            CHECK(whole.low < whole.mid);
            CHECK(whole.mid < whole.high);
            CHECK(whole.low > washed.low);
            CHECK(whole.high < 1 - (1 - draw_in().high) * (1 - washed.high));  // not both at worst
        }
}

TEST_CASE("wool washed lightly loses 15 to 24 % of its width in the reed, cotton about 16 %") {
    // models.md 8, of published pieces: wool 15 to 26 as people wash it, cotton 10 to 21.
    const auto wool = width_loss(Finish::light, 1), cotton = width_loss(Finish::light, 0);
    CHECK(wool.low == near(0.145, 0.06));
    CHECK(wool.high == near(0.24, 0.06));
    CHECK(cotton.mid == near(0.16, 0.03));
    CHECK(cotton.low == near(0.10, 0.12));
    CHECK(cotton.high == near(0.21, 0.03));
    CHECK(length_loss(Finish::light, 0).mid == near(0.056, 0.01));
}

TEST_CASE("what does not full does not shrink more for being fulled, wool does, step by step") {
    for (const auto finish : finishes) {
        CHECK(width_loss(finish, 0).mid == width_loss(Finish::light, 0).mid);
        CHECK(length_loss(finish, 0).mid == length_loss(Finish::light, 0).mid);
    }
    for (int i = 1; i < 3; ++i) {
        CHECK(width_loss(finishes[i], 1).mid > width_loss(finishes[i - 1], 1).mid);
        CHECK(length_loss(finishes[i], 1).mid > length_loss(finishes[i - 1], 1).mid);
    }
    const auto half = width_loss(Finish::hard_fulled, 0.5).mid;
    CHECK(half > width_loss(Finish::hard_fulled, 0).mid);
    CHECK(half < width_loss(Finish::hard_fulled, 1).mid);
}
