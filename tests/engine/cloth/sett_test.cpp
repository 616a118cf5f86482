#include "engine/cloth/sett.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>

#include "engine/yarn/count.hpp"
#include "engine/yarn/loft.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

LinearDensity yards_per_pound(double yd) { return pounds(1) / yards(yd); }

double epi(Sett sett) { return in_ends_per_inch(sett); }

}  // namespace

TEST_CASE(
    "8/2 cotton, 3360 yd/lb: D 52, plain 26, 2/2 twill 34.7 (Ashenhurst formula note, 1999)") {
    const auto d = packed_diameter(yards_per_pound(3360), ashenhurst(SpunAs::worsted));
    CHECK(inches(1) / d == near(52.169, 1e-4));
    CHECK(epi(greatest_sett(d, plain_weave)) == near(26.08, 0.001));
    CHECK(epi(greatest_sett(d, twill_2_2)) == near(34.78, 0.001));
}

TEST_CASE(
    "diameters per inch of cotton yarns, C 0.95 (J. T. Taylor, Cotton Weaving and Designing)") {
    struct Row {
        double count, per_inch;
    };
    for (const auto& [count, per_inch] :
         {Row{15, 106.5}, Row{32, 156}, Row{78, 243}, Row{200, 390}}) {
        const auto d = linear_density_of(count, count_system("cotton count"));
        CHECK(inches(1) / packed_diameter(d, 0.95) == near(per_inch, 0.003));
    }
}

TEST_CASE("plain at 103 to 2/2 twill of the same yarn: 137 1/3 (Taylor)") {
    const Length d = inches(1 / 206.0);
    CHECK(epi(greatest_sett(d, plain_weave)) == Approx(103));
    CHECK(epi(greatest_sett(d, twill_2_2)) == Approx(137 + 1.0 / 3));
}

TEST_CASE("greatest sett is R / (R + I) of the diameters: 0.5, 0.6, 0.667 (Ashenhurst)") {
    CHECK(greatest_sett(inches(1), plain_weave) * inches(1) == Approx(0.5));
    CHECK(greatest_sett(inches(1), twill_2_1) * inches(1) == Approx(0.6));
    CHECK(greatest_sett(inches(1), twill_2_2) * inches(1) == Approx(2.0 / 3));
}

TEST_CASE("the trade's handspun setts are 55 to 80 % of the greatest woollen sett") {
    // Spin-Off yarn standards sheet: 1901-2400 yd/lb at 12-15 ends/in, 1201-1900 at 10-12.
    struct Row {
        double yards, low, high;
    };
    for (const auto& [yards, low, high] :
         {Row{2150, 12, 15}, Row{1550, 10, 12}, Row{1050, 8, 10}, Row{750, 6, 8}}) {
        const auto most = epi(greatest_sett(
            packed_diameter(yards_per_pound(yards), ashenhurst(SpunAs::woollen)), plain_weave));
        INFO(yards, " yd/lb: greatest ", most);
        CHECK(low / most > share_band(Spacing::open).low);
        CHECK(high / most < share_band(Spacing::general).high);
    }
}

TEST_CASE("a purpose's share of the greatest sett: general cloth as read in Osterkamp 2011") {
    // The others are common practice, no source: open 50 to 60, a scarf 60 to 70, firm 80 to 90.
    const auto holds = [](Spacing purpose, double low, double high) {
        return share_band(purpose).low == low && share_band(purpose).high == high;
    };
    CHECK(holds(Spacing::general, 0.75, 0.80));
    CHECK(holds(Spacing::open, 0.50, 0.60));
    CHECK(holds(Spacing::scarf, 0.60, 0.70));
    CHECK(holds(Spacing::firm, 0.80, 0.90));
}

TEST_CASE("take-up at 50 to 100 % of the greatest plain sett (derived from Peirce 1937)") {
    struct Row {
        double share, percent;
    };
    for (const auto& [share, percent] : {Row{0.5, 3.5}, Row{0.6, 5.1}, Row{0.7, 6.9}, Row{0.8, 9.0},
                                         Row{0.9, 11.4}, Row{1.0, 14.1}}) {
        const Length d = millimetres(0.6);
        const auto sett = share * greatest_sett(d, plain_weave);
        CHECK(std::abs(100 * take_up(sett, d) - percent) < 0.06);
    }
}

TEST_CASE("a loss is divided out: 10 in to 8 in is 20 %, and 12 in would give only 9.6 in") {
    // Conference of Northern California Handweavers, Ratios and rate of shrinkage, 2016.
    CHECK(in_inches(before_loss(inches(8), 0.20)) == Approx(10));
    CHECK(in_inches(before_loss(inches(10), 0.20)) == Approx(12.5));
    CHECK(in_inches(inches(12) * (1 - 0.20)) == Approx(9.6));
}

TEST_CASE("weft of a plan: 8 picks/cm, 200 cm + 10 %, 50 cm + 10 % is 1760 picks, 968 m") {
    // Published weaving plan (weave_cases_open.csv H01): allowances are added there.
    Panel panel;
    panel.width = centimetres(55);
    panel.length = centimetres(220);
    panel.ends = panel.picks = ends_per_cm(8);
    const auto out = panel_metres(panel);
    CHECK(out.picks == 1760);
    CHECK(in_metres(out.weft) == Approx(968));
}

TEST_CASE("warp of a plan: 48 in at 48 epi, 7.5 yd an end is 2304 ends, 17280 yd, 2.057 lb (H03)") {
    Panel panel;
    panel.width = inches(48);
    panel.length = yards(7.5);
    panel.ends = panel.picks = ends_per_inch(48);
    const auto out = panel_metres(panel);
    CHECK(out.ends == 2304);
    CHECK(in_yards(out.warp) == Approx(17280));
    CHECK(in_kilograms(yards_per_pound(8400) * out.warp) ==
          near(in_kilograms(pounds(2.057)), 1e-3));
}

TEST_CASE("a handspun scarf worked by hand: loss divided, take-up and waste added, whole repeats") {
    Panel panel;
    panel.width = centimetres(20);
    panel.length = centimetres(170);
    panel.fringe = centimetres(20);
    panel.loom_waste = centimetres(50);
    panel.ends = panel.picks = ends_per_10cm(50);
    panel.width_loss = 0.135;
    panel.length_loss = 0.10;
    panel.warp_take_up = 0.06;
    panel.end_repeat = 2;
    const auto out = panel_metres(panel);
    CHECK(out.ends == 116);  // 20 / 0.865 = 23.12 cm, 115.6 ends
    CHECK(in_centimetres(out.woven_length) == near(188.89, 1e-4));
    CHECK(in_centimetres(out.warp_per_end) == near(270.22, 1e-4));
    CHECK(in_metres(out.warp) == near(313.46, 1e-4));
    CHECK(out.picks == 945);
    CHECK(in_metres(out.weft) == near(219.24, 1e-4));
}
