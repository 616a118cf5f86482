#include <doctest/doctest.h>

#include <cmath>

#include "catalog/bad_text.hpp"
#include "catalog/source.hpp"
#include "catalog/tables.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/woven.hpp"

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
    return "name,threads,intersections,shafts,take_up,most_in_hole,end_repeat,pick_repeat,"
           "definition,loose_loops,mark,source,chart\n"
           "plain,2,2,2,1,1,2,2,0,no,read,x," +
           chart + "\n";
}

}  // namespace

TEST_CASE("every knitted fabric as drawn uses the metres per area of its row, within its range") {
    const auto source = read_source(ROOT_DIR "/catalog");
    for (const auto& fabric : source.fabrics.knitted) {
        if (fabric.chart.empty()) continue;
        CAPTURE(fabric.name);
        const auto cloth = cloth_of(fabric);
        const auto s = lay::spacing(cloth, millimetres(1));
        const auto drawn =
            lay::knitted(lay::read_chart(fabric.chart, lay::stitch_letters), s,
                         4 * fabric.stitch_repeat * s.stitch, 4 * fabric.row_repeat * s.row);
        const double plain = plain_metres_per_area(cloth.loop, Relaxation::full).si() / 1000;
        const double factor =
            lay::yarn_shown(drawn) / (drawn.width * drawn.height) / plain * fabric.growth;
        CHECK(factor > fabric.metres_low * 0.97);
        CHECK(factor < fabric.metres_high * 1.03);
    }
}

TEST_CASE("every weave's chart crosses as often as its row says") {
    const auto source = read_source(ROOT_DIR "/catalog");
    for (const auto& weave : source.fabrics.weaves) {
        CAPTURE(weave.name);
        const auto chart = lay::read_chart(weave.chart, lay::weave_letters);
        CHECK(lay::intersections(chart) * weave.interlacing.threads / chart.across() ==
              doctest::Approx(weave.interlacing.intersections));
    }
}

TEST_CASE("a chart that is none, or does not fit its repeat, stops the build") {
    CHECK(read_weaves(weaves_with_chart("x-/-x"), "weaves.csv").size() == 1);
    CHECK(read_weaves(weaves_with_chart(""), "weaves.csv").front().chart.empty());
    for (const auto* bad : {"x-/-", "xk/kx", "xx-/--x", "x-/-x/x-"})
        CHECK_THROWS_AS(read_weaves(weaves_with_chart(bad), "weaves.csv"), BadText);
}
