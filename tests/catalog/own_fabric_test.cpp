#include <doctest/doctest.h>

#include "catalog/reference/source.hpp"
#include "catalog/reference/template_text.hpp"
#include "catalog/text/bad_text.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

std::string scarf(const std::string& craft, const std::string& own, const std::string& fabric) {
    const bool knitted = craft == "knitted";
    return "title = 'Scarf'\narticle = 'scarf'\nabout = 'x'\ncraft = '" + craft +
           "'\nskill = 'some practice'\ntouches = 'skin'\n" + own +
           "\n[size]\nmeasure = 'length'\nsmallest = '100cm'\nideal = '150cm'\nlargest = "
           "'200cm'\n[cloth]\nweights = ['fine', 'light']\n" +
           (knitted
                ? "firmness = 'drapey'\n"
                : "spacing = 'scarf'\nfinish = 'light'\nfringe = '0cm'\nloom_waste = '50cm'\n") +
           "[[piece]]\nname = 'body'\nshape = 'rectangle'\nwidth = '20cm'\nlength = "
           "'150cm'\nfabric = '" +
           fabric +
           "'\ngrows = 'length'\n[wants]\nsoftness = [0.5, 0.5]\n[words]\nsteps = ['Go.']\n";
}

Template own_template(const std::string& text) {
    static const auto source = read_source(ROOT_DIR "/catalog");
    return read_template(text, "mine", "mine.toml", source.fabrics);
}

}  // namespace

// By hand: four of sixteen stitches slipped, each a strand of 0.24: (12 + 4 x 0.24) / 16 = 0.81,
// times 1.1 stitches and 1.2 rows.
TEST_CASE("a person's own chart is costed stitch by stitch") {
    const auto mine = own_template(scarf(
        "knitted", "[[stitch]]\nname = 'mine'\nchart = 'kkkk/ksks/kkkk/sksk'\ngauge = [1.1, 1.2]\n",
        "mine"));
    REQUIRE(mine.own.knitted.size() == 1);
    CHECK(mine.own.knitted[0].metres == doctest::Approx(0.81 * 1.1 * 1.2));
    CHECK(mine.own.knitted[0].stitch_repeat == 4);
    CHECK_FALSE(mine.own.knitted[0].loose_loops);
    const auto lace = own_template(
        scarf("knitted", "[[stitch]]\nname = 'holes'\nchart = 'kkkk/otot'\n", "holes"));
    CHECK(lace.own.knitted[0].growth == doctest::Approx(1.08 + 1.3 * 0.25));
    CHECK(lace.own.knitted[0].loose_loops);
}

TEST_CASE("a person's own draft gives its crossings, floats and shafts") {
    const auto mine = own_template(
        scarf("woven", "[[weave]]\nname = 'mine'\nchart = 'x---/-x--/--x-/---x'\n", "mine"));
    REQUIRE(mine.own.weaves.size() == 1);
    CHECK(mine.own.weaves[0].interlacing.threads == 4);
    CHECK(mine.own.weaves[0].interlacing.intersections == 2);
    CHECK(mine.own.weaves[0].weft_float == 3);
    CHECK(mine.own.weaves[0].shafts == 4);
}

TEST_CASE("a chart of one's own that cannot be, or takes a known name, is refused by its key") {
    for (const auto* bad :
         {"name = 'mine'\nchart = 'kk/k'", "name = 'mine'\nchart = 'kw'",
          "name = 'garter'\nchart = 'k'", "name = 'mine'\nchart = 'k'\ngauge = [9, 1]"})
        CHECK_THROWS_AS(
            own_template(scarf("knitted", "[[stitch]]\n" + std::string(bad) + "\n", "mine")),
            BadText);
    CHECK_THROWS_AS(
        own_template(scarf("woven", "[[weave]]\nname = 'mine'\nchart = 'x-/x-'\n", "mine")),
        BadText);
}
