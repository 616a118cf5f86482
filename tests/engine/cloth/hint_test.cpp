#include "engine/cloth/hint.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "engine/cloth/knitting.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

Batch batch_of(Length length, Mass mass, LengthState state) {
    Batch out;
    out.skeins.push_back({"A", length, mass, state});
    return out;
}

std::vector<Measurement> taken(const std::vector<Hint>& hints) {
    std::vector<Measurement> out;
    for (const auto& hint : hints) out.push_back(hint.take);
    return out;
}

}  // namespace

TEST_CASE("each measurement that is missing is asked for, and none that is there") {
    using enum Measurement;
    auto coarse = batch_of(metres(40), grams(8), LengthState::on_reel);
    coarse.measuring.scale_step = grams(1);
    const auto bare = what_sharpens(profile(coarse, {}));
    CHECK(taken(bare) == std::vector{swatch, wraps, washed_lengths, finer_scale, ply_twist, fibre});
    CHECK(bare[3].skein == "A");
    auto known = batch_of(metres(400), grams(80), LengthState::washed);
    known.measuring.scale_step = grams(0.1);
    known.washed_gauge = stitches_per_10cm(28);
    known.ply_twist = turns_per_inch(5);
    known.wraps = WrapsReading{wraps_per_inch(17), inches(2), WrapsHow::laid};
    known.fibre = {{}};
    known.fibre[0].micron_low = microns(24), known.fibre[0].micron_high = microns(26);
    CHECK(what_sharpens(profile(known, {})).empty());
}

TEST_CASE("a hint says what taking it gives: measured, the margin is what it promised") {
    auto batch = batch_of(metres(400), grams(80), LengthState::on_reel);
    const auto yarn = profile(batch, {});
    const auto hints = what_sharpens(yarn);
    auto counted = batch;
    counted.washed_gauge = stitches_per_10cm(20);
    const auto margin = [](const Batch& of) {
        return knit_cloth(profile(of, {}), KnitFabric{}, Firmness::ordinary, {})
            .metres_per_area.spread;
    };
    CHECK(hints[0].before == margin(batch));
    CHECK(hints[0].after == margin(counted));
    CHECK(hints[0].after < 0.5 * hints[0].before);
    CHECK(hints[1].after < hints[1].before);
    CHECK(hints[2].before == yarn.length.spread);
    batch.skeins[0].state = LengthState::washed;
    CHECK(hints[2].after == near(profile(batch, {}).length.spread, 1e-9));
}
