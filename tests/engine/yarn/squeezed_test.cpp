#include "engine/yarn/squeezed.hpp"

#include <doctest/doctest.h>

#include "engine/yarn/constants.hpp"
#include "engine/yarn/described.hpp"
#include "engine/yarn/loft.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

Batch of(const char* kind, const char* category, Preparation preparation = Preparation::unknown) {
    Batch out;
    FibrePart part;
    part.kind = kind;
    part.category = category;
    out.fibre = {part};
    out.preparation = preparation;
    return out;
}

Batch wrapped(Batch batch, double count, WrapsHow how = WrapsHow::laid) {
    batch.wraps = WrapsReading{wraps_per_inch(count), inches(1), how};
    return batch;
}

const Batch woollen = of("sheep", "medium", Preparation::carded);

}  // namespace

TEST_CASE(
    "Ashenhurst's C goes by fibre and make: woollen 0.84, worsted 0.90, cotton 0.90 to 0.95") {
    CHECK(usual_close_packing(woollen) == 0.84);
    CHECK(usual_close_packing(of("sheep", "medium", Preparation::combed)) == 0.90);
    const double cotton = usual_close_packing(of("plant", "seed hair", Preparation::carded));
    CHECK(cotton > 0.90);
    CHECK(cotton < 0.95);
    CHECK(usual_close_packing({}) > 0.84);  // not said how: between the two
    CHECK(usual_close_packing({}) < 0.90);
}

// 222 tex of woollen yarn, 2234 yd/lb. Half of 14 wraps is 7 ends to the inch, Ashenhurst says 11.9
// to 13.9 for a scarf, and a master would sample at 10 (judgement): between the two.
TEST_CASE("a lofty woollen yarn is set more openly than its grist alone says") {
    const auto grist = tex(222);
    const auto c = [&](double wraps) { return close_packing(wrapped(woollen, wraps), grist); };
    CHECK(c(10) < c(14));
    CHECK(c(14) < c(20));
    CHECK(c(14) == near(0.74, 0.02));
    CHECK(c(17.5) == near(0.84, 0.03));  // of usual loft: as without a count
    CHECK(c(4) == constants::any_c.low);
    CHECK(c(40) == constants::any_c.high);
}

TEST_CASE("wraps packed to refusal are the squeezed yarn itself") {
    const auto grist = tex(222);
    const double c = close_packing(wrapped(woollen, 38, WrapsHow::packed), grist);
    CHECK(in_millimetres(packed_diameter(grist, c)) == near(25.4 / 38, 1e-6));
}

TEST_CASE("hair draws together in washing, other fibre does not, not said, it is hair") {
    CHECK(share_of_hair({}) == 1);
    CHECK(share_of_hair(woollen) == 1);
    CHECK(share_of_hair(of("other animal", "camelid")) == 1);
    for (const auto* still : {"plant", "silk", "man-made"})
        CHECK(share_of_hair(of(still, "")) == 0);
    auto blend = of("sheep", "fine");
    blend.fibre[0].share = 0.7;
    blend.fibre.push_back(of("silk", "").fibre[0]);
    blend.fibre[1].share = 0.3;
    CHECK(share_of_hair(blend) == doctest::Approx(0.7));
}

TEST_CASE("a bought yarn's words say its fibre") {
    CHECK(described_hair("8/2 cotton") == 0.0);
    CHECK(described_hair("16/2 linen") == 0.0);
    CHECK(described_hair("12/2 worsted") == 1.0);
    CHECK_FALSE(described_hair("2/20 Nm").has_value());
    CHECK(described_close_packing("8/2 cotton") == constants::cotton_spun.c);
}
