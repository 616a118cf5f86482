#include "engine/cloth/gauge_range.hpp"

#include <doctest/doctest.h>

#include "tests/engine/invented.hpp"

using namespace gristwright;

// The trade's weight table: 23 to 26 stitches for light (about 230 tex), 27 to 32 for super fine,
// lace knitted from 24 on: all of them can be. Stitches counted over 4 in and typed as to the inch
// cannot.
TEST_CASE("a gauge that a yarn can be knitted at is believed, one far off is asked about") {
    struct Case {
        double tex, stitches;
        bool far;
    };
    for (const auto& c : {Case{430, 22, false}, Case{250, 32, false}, Case{111, 20, false},
                          Case{455, 60, true}, Case{455, 7, true}, Case{250, 86, true}}) {
        CAPTURE(c.tex);
        CAPTURE(c.stitches);
        const auto far = far_from_yarn(stitches_per_10cm(c.stitches), invented::yarn(500, c.tex));
        CHECK(far.has_value() == c.far);
    }
}

TEST_CASE("the swatch itself does not decide what is usual") {
    auto yarn = invented::yarn(500, 455);
    yarn.washed_gauge = stitches_per_10cm(60);
    const auto far = far_from_yarn(stitches_per_10cm(60), yarn);
    REQUIRE(far);
    CHECK(far->usual < far->counted);
}
