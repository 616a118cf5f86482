#include "engine/cloth/knitting.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;
using invented::yarn;

namespace {

const KnitFabric plain{};

KnitCloth knitted(const YarnProfile& yarn, Firmness purpose = Firmness::ordinary,
                  const KnitFabric& fabric = plain) {
    return knit_cloth(yarn, fabric, purpose, {});
}

YarnProfile wrapped(YarnProfile yarn, double wpi) {
    yarn.wraps_measured = true;
    yarn.laid_wraps = {wraps_per_inch(wpi), 0.07};
    return yarn;
}

YarnProfile swatched(YarnProfile yarn, Gauge gauge) {
    yarn.washed_gauge = gauge;
    return yarn;
}

}  // namespace

TEST_CASE("without wraps the gauge is the grist's; with them it lies between, and the loft shows") {
    const auto bare = knitted(yarn(400, 224.7));
    CHECK(bare.gauge.mid == bare.by_grist.mid);
    CHECK(bare.by_wraps.mid == Gauge{});
    const auto lofty = knitted(wrapped(yarn(400, 224.7), 13));
    CHECK(lofty.by_wraps.mid < lofty.by_grist.mid);
    CHECK(lofty.gauge.mid < bare.gauge.mid);
    CHECK(lofty.gauge.mid > lofty.by_wraps.mid);
    const auto agreeing = knitted(wrapped(yarn(400, 224.7), 17.4));
    CHECK(agreeing.gauge.spread < bare.gauge.spread);
    CHECK(lofty.gauge.spread > agreeing.gauge.spread);  // two readings apart are less sure
}

TEST_CASE("the cloth of a purpose lies in that purpose's tightness band") {
    for (const auto purpose :
         {Firmness::lace, Firmness::drapey, Firmness::ordinary, Firmness::firm, Firmness::sock})
        for (const double grist : {60.0, 200.0, 600.0}) {
            const auto cloth = knitted(yarn(400, grist), purpose);
            CHECK(cloth.tightness >= tightness_band(purpose).low);
            CHECK(cloth.tightness <= tightness_band(purpose).high);
        }
}

TEST_CASE("a swatch that suits the purpose is taken as it is, and narrows the margin") {
    const auto guessed = knitted(yarn(400, 224.7));
    const auto gauge = guessed.gauge.mid * 0.97;
    const auto cloth = knitted(swatched(yarn(400, 224.7), gauge));
    CHECK(cloth.from_swatch);
    CHECK(cloth.gauge.mid == gauge);
    CHECK(cloth.metres_per_area.spread < guessed.metres_per_area.spread);
}

TEST_CASE("a tight knitter's swatch makes the cloth of another purpose tighter too, not looser") {
    const auto middle = knitted(yarn(400, 224.7)).gauge.mid;
    const auto shawl = [&](double habit) {
        return knitted(swatched(yarn(400, 224.7), middle * habit), Firmness::lace).gauge.mid;
    };
    const auto table = knitted(yarn(400, 224.7), Firmness::lace).gauge.mid;
    CHECK(shawl(1.0) / table == Approx(1));
    CHECK(shawl(1.08) / table > 1.05);
    CHECK(shawl(0.93) / table < 0.95);
}

TEST_CASE("5 st/in of a plain fabric is 0.764 yd a square inch, as worked by hand for the loop") {
    const auto cloth = knitted(swatched(yarn(400, 400), stitches_per_inch(5)));
    REQUIRE(cloth.from_swatch);
    const auto inch = inches(1) * inches(1);
    CHECK(in_yards(cloth.metres_per_area.mid * inch) == near(0.764, 0.001));
    CHECK(in_stitches_per_inch(cloth.stitches) == Approx(5));
    CHECK(cloth.rows / cloth.stitches == Approx(5.5 / 4.2));
    CHECK(cloth.mass_per_area.si() == Approx(cloth.metres_per_area.mid.si() * 400e-6));
}

TEST_CASE("metres per area do not depend on the grist once the gauge is known") {
    const auto thin = knitted(swatched(yarn(400, 390), stitches_per_inch(5)));
    const auto thick = knitted(swatched(yarn(400, 430), stitches_per_inch(5)));
    CHECK(thin.metres_per_area.mid == thick.metres_per_area.mid);
    CHECK(thin.mass_per_area < thick.mass_per_area);
}

TEST_CASE("a fabric takes its factor of yarn; blocked to more area it takes less by that much") {
    KnitFabric cables = plain, lace = plain;
    cables.metres = 1.29, cables.stitches = 1.2;
    lace.growth = lace.growth_low = lace.growth_high = 1.6;
    const auto flat = knitted(yarn(400, 200));
    const auto cabled = knitted(yarn(400, 200), Firmness::ordinary, cables);
    const auto open = knitted(yarn(400, 200), Firmness::ordinary, lace);
    CHECK(cabled.metres_per_area.mid.si() == Approx(1.29 * flat.metres_per_area.mid.si()));
    CHECK(cabled.stitches / flat.stitches == Approx(1.2));
    CHECK(open.metres_per_area.mid.si() == Approx(flat.metres_per_area.mid.si() / 1.6));
    // The same loops, on more area: stitches x rows fall as the area grows.
    CHECK(open.stitches / flat.stitches * (open.rows / flat.rows) == Approx(1 / 1.6));
    CHECK(open.gauge.mid == flat.gauge.mid);
}

TEST_CASE("a fabric whose factor is not well known widens the margin of the metres") {
    KnitFabric vague = plain;
    vague.metres_low = 0.8, vague.metres_high = 1.25;
    CHECK(knitted(yarn(400, 200), Firmness::ordinary, vague).metres_per_area.spread >
          knitted(yarn(400, 200)).metres_per_area.spread + 0.02);
}

TEST_CASE("the needle is the nearest one owned; one too far off is said to be so") {
    const auto free = knit_cloth(yarn(400, 224.7), plain, Firmness::ordinary, {});
    CHECK(free.needle_owned);
    const double ideal = in_millimetres(needle_for(free.loop));
    CHECK(std::abs(in_millimetres(free.needle) - ideal) <= 0.25);
    const std::vector<Length> owned{millimetres(6), free.needle, millimetres(2)};
    CHECK(knit_cloth(yarn(400, 224.7), plain, Firmness::ordinary, owned).needle == free.needle);
    const auto far = knit_cloth(yarn(400, 224.7), plain, Firmness::ordinary, {millimetres(8)});
    CHECK(far.needle == millimetres(8));
    CHECK_FALSE(far.needle_owned);
    // Half a millimetre decides at this size: 0.35 mm and a twentieth of the needle.
    const auto owning = [&](double away) {
        const std::vector<Length> one{millimetres(ideal + away)};
        return knit_cloth(yarn(400, 224.7), plain, Firmness::ordinary, one).needle_owned;
    };
    CHECK(owning(0.4));
    CHECK_FALSE(owning(0.6));
    CHECK(far.gauge.mid == free.gauge.mid);  // the plan stays what it should be
}
