#include "engine/project/warp.hpp"

#include <doctest/doctest.h>

#include "engine/project/constants.hpp"

using namespace gristwright;

// By hand: ends of 3 m from skeins of 139, 163 and 78 m are 46, 54 and 26; 120 ends take 46, 54
// and 20.
TEST_CASE("a warp of three skeins: whole ends from each, and they add up") {
    const auto shares = share_warp({metres(139), metres(163), metres(78)}, 120, metres(3));
    REQUIRE(shares.size() == 3);
    CHECK(shares[0].ends == 46);
    CHECK(shares[1].ends == 54);
    CHECK(shares[2].ends == 20);
    Length used;
    int ends = 0;
    for (const auto& share : shares) used += share.used, ends += share.ends;
    CHECK(ends == 120);
    CHECK(in_metres(used) == doctest::Approx(360));
    CHECK(share_warp({metres(139)}, 120, metres(3)).front().ends == 46);
    CHECK(share_warp({metres(2)}, 120, metres(3)).empty());
}

TEST_CASE("what is hung on an end grows with its grist, from a least to a most") {
    CHECK(in_grams(hung_on_an_end(tex(200))) == doctest::Approx(200 * constants::hung_per_tex));
    CHECK(in_grams(hung_on_an_end(tex(20))) == doctest::Approx(constants::least_hung));
    CHECK(in_grams(hung_on_an_end(tex(1700))) == doctest::Approx(constants::most_hung));
}
