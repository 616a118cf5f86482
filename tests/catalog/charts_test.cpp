#include <doctest/doctest.h>

#include <cmath>

#include "catalog/reference/source.hpp"
#include "catalog/reference/tables.hpp"
#include "catalog/text/bad_text.hpp"
#include "engine/lay/draft.hpp"
#include "engine/lay/laid.hpp"
#include "engine/lay/stitch.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

// A cloth of this fabric knitted at 25 stitches to 10 cm in stocking stitch.
KnitCloth cloth_of(const KnitFabric& fabric) {
    KnitCloth out;
    out.fabric = std::make_shared<const KnitFabric>(fabric);
    out.loop = loop_from_stitches(stitches_per_10cm(25), Relaxation::full);
    const double stretch = std::sqrt(fabric.growth);
    out.stitches = stitches_per_10cm(25) * (fabric.stitches / stretch);
    out.rows = rows_from_loop(out.loop, Relaxation::full) * (fabric.rows / stretch);
    out.metres_per_area = {
        plain_metres_per_area(out.loop, Relaxation::full) * (fabric.metres / fabric.growth), 0.1};
    return out;
}

std::string weaves_with_chart(const std::string& chart) {
    return "name,sett,picks,shafts,take_up,gathers,gathers_low,gathers_high,gathers_mark,"
           "gathers_source,most_in_hole,end_repeat,pick_repeat,definition,loose_loops,mark,source,"
           "chart,colours,areas,built\nplain,,1,2,1,,,,,,1,2,2,0,no,read,x," +
           chart + (chart.find(',') == std::string::npos ? ",,,\n" : "\n");
}

}  // namespace

TEST_CASE("every knitted fabric as drawn uses the metres per area of its row, within its range") {
    const auto source = read_source(ROOT_DIR "/catalog");
    for (const auto& fabric : source.fabrics.knitted) {
        CAPTURE(fabric.name);
        REQUIRE_FALSE(fabric.chart.empty());
        const auto cloth = cloth_of(fabric);
        const auto s = lay::spacing(cloth, millimetres(1));
        const double width = 4 * fabric.stitch_repeat * s.stitch;
        const double height = 4 * fabric.row_repeat * s.row;
        const auto drawn = lay::laid(fabric, s, width, height);
        const double plain = plain_metres_per_area(cloth.loop, Relaxation::full).si() / 1000;
        const double factor =
            lay::yarn_shown(drawn, width, height) / (width * height) / plain * fabric.growth;
        CHECK(factor > fabric.metres_low * 0.97);
        CHECK(factor < fabric.metres_high * 1.03);
    }
}

TEST_CASE("metres worked out from a chart lie in the range of its row") {
    const auto source = read_source(ROOT_DIR "/catalog");
    for (const auto& fabric : source.fabrics.knitted) {
        // Two layers of cloth have one chart of one face.
        if (fabric.built == KnitBuild::two_layers) continue;
        CAPTURE(fabric.name);
        const double metres = lay::metres_by_chart(
            lay::read_chart(fabric.chart, lay::stitch_letters), fabric.stitches, fabric.rows);
        CHECK(metres > fabric.metres_low * 0.995);
        CHECK(metres < fabric.metres_high * 1.005);
    }
}

// R and I as read: plain, 2/2 twill (Ashenhurst), 2/1 twill (Taylor), five-end satin (Brooks 1892);
// weft floats of 5 and warp floats of 3 in a four-shaft waffle, by the rule of Britannica 1911.
TEST_CASE("what a weave's chart tells agrees with published drafts") {
    const auto source = read_source(ROOT_DIR "/catalog");
    const auto check = [&](const char* name, double r, double i, int warp, int weft) {
        const auto* weave = source.fabrics.weave_named(name);
        REQUIRE(weave);
        CAPTURE(name);
        CHECK(weave->interlacing.threads == r);
        CHECK(weave->interlacing.intersections == doctest::Approx(i));
        CHECK(weave->warp_float == warp);
        CHECK(weave->weft_float == weft);
    };
    check("plain", 2, 2, 1, 1);
    check("2/2 twill", 4, 2, 2, 2);
    check("2/1 twill", 3, 2, 2, 2);
    check("1/3 twill", 4, 2, 3, 3);
    check("basket", 4, 2, 2, 2);
    check("5-end sateen", 5, 2, 4, 4);
    check("waffle", 6, 13 / 3.0, 5, 5);
    check("herringbone", 8, 5, 2, 2);
}

TEST_CASE("a chart that is none, or does not fit its repeat, stops the build") {
    CHECK(read_weaves(weaves_with_chart("x-/-x"), "weaves.csv").size() == 1);
    const auto leno = read_weaves(weaves_with_chart("x-/-x,,13/11,crossed ends"), "weaves.csv");
    CHECK(leno.front().areas == "13/11");
    CHECK(leno.front().built == WeaveBuild::crossed_ends);
    for (const auto* bad :
         {"", "x-/-", "xk/kx", "xx-/--x", "x-/-x/x-", "x-/x-", "x-/-x,,124,", "x-/-x,,1,crossed"})
        CHECK_THROWS_AS(read_weaves(weaves_with_chart(bad), "weaves.csv"), BadText);
}
