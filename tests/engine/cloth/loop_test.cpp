#include "engine/cloth/loop.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "engine/cloth/knitting_constants.hpp"
#include "tests/cases.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

// Yards of yarn in a plain, fully relaxed panel of inches at a gauge per inch.
double plain_yards(double square_inches, double per_inch) {
    const auto loop = loop_from_stitches(stitches_per_inch(per_inch), Relaxation::full);
    const auto area = square_metres(square_inches * 0.0254 * 0.0254);
    return in_yards(plain_metres_per_area(loop, Relaxation::full) * area);
}
}  // namespace

TEST_CASE("gauge and loop are inverse, rows follow stitches by kc / kw") {
    for (const auto state : {Relaxation::dry, Relaxation::wet, Relaxation::full}) {
        const auto loop = loop_from_stitches(stitches_per_10cm(28), state);
        CHECK(in_stitches_per_10cm(stitches_from_loop(loop, state)) == Approx(28));
        const double ratio =
            rows_from_loop(loop, state).si() / stitches_from_loop(loop, state).si();
        CHECK(ratio > 1.28);  // published hand-knitted soaked swatches: 1.30-1.35
        CHECK(ratio < 1.36);
    }
}

TEST_CASE("5 st/in fully relaxed takes 0.764 yd a square inch (worked by hand: 5.5 x 5 / 36)") {
    CHECK(plain_yards(1, 5) == near(0.764, 0.001));
}

TEST_CASE("metres per area grow with the gauge, width and length grow the metres in step") {
    CHECK(plain_yards(1, 7) == Approx(7 * plain_yards(1, 1)));
    CHECK(plain_yards(200, 5) == Approx(2 * plain_yards(100, 5)));
}

TEST_CASE("tightness and its loop are inverse") {
    CHECK(tightness(tex(224.7), loop_for_tightness(tex(224.7), 1.05)) == Approx(1.05));
}

TEST_CASE("the trade's weight table: each class's gauge from its own grist within 10 %") {
    // Craft Yarn Council gauges, Spin-Off yards per pound; lace and super bulky have open bands.
    for (const auto& row : read_cases("weight_classes.csv")) {
        if (row.at("yd_per_lb_lo").empty() || row.at("yd_per_lb_hi").empty()) continue;
        const double yards_per_pound =
            std::sqrt(figure(row, "yd_per_lb_lo") * figure(row, "yd_per_lb_hi"));
        auto ours = gauge_by_grist(pounds(1) / yards(yards_per_pound));
        ours.spread = together(ours.spread, constants::between_knitters);
        INFO(row.at("name"), ": ", 4 * in_stitches_per_inch(ours.mid), " st / 4 in");
        const double tables = middle(row, "st_per_4in_lo", "st_per_4in_hi");
        CHECK(std::abs(4 * in_stitches_per_inch(ours.mid) / tables - 1) < 0.10);
        CHECK(in_stitches_per_inch(ours.low()) * 4 < tables);
        CHECK(in_stitches_per_inch(ours.high()) * 4 > tables);
    }
}

TEST_CASE("16 laid wraps: 6.9 st/in by wraps, near 7.4 by 224.7 tex (worked by hand)") {
    const auto wraps = gauge_by_wraps(wraps_per_inch(16), 0.07);
    CHECK(in_stitches_per_inch(wraps.mid) == Approx(6.88));
    const auto grist = gauge_by_grist(tex(224.7));
    CHECK(in_stitches_per_inch(grist.mid) == near(7.47, 0.005));
    const auto both = weigh(grist, wraps);
    CHECK(both.mid < grist.mid);
    CHECK(both.mid > wraps.mid);
}

TEST_CASE("beyond 7 to 18 wraps the count loses its say: 36 wraps of laceweight say less than 16") {
    const auto usual = gauge_by_wraps(wraps_per_inch(16), 0.07);
    const auto lace = gauge_by_wraps(wraps_per_inch(36), 0.07);
    CHECK(lace.spread > 10 * usual.spread);
    const auto grist = gauge_by_grist(tex(111));
    CHECK(weigh(grist, lace).mid / grist.mid == near(1, 0.02));
    CHECK(gauge_by_wraps(wraps_per_inch(18.1), 0.07).spread ==
          near(gauge_by_wraps(wraps_per_inch(17.9), 0.07).spread, 0.02));  // by degrees
}

TEST_CASE("published panels lie in their whole-skein interval (70-yd skeins, Star Book 225)") {
    // Cables and trinity take 1.29-1.41 times plain cloth of the same stitch gauge (derived).
    struct Panel {
        const char* id;
        double factor, extra_square_inches, yards_above, yards_to;
    };
    const auto cases = read_cases("knit_cases_open.csv");
    for (const auto& panel : {Panel{"K55", 1.35, 0, 140, 210}, Panel{"K57", 1.35, 0, 70, 140},
                              Panel{"K61", 1.0, 60, 210, 280}}) {
        for (const auto& row : cases) {
            if (row.at("id") != panel.id) continue;
            const double area =
                figure(row, "width_in") * figure(row, "length_in") + panel.extra_square_inches;
            const double ours = panel.factor * plain_yards(area, figure(row, "gauge_st_per_in"));
            INFO(panel.id, " ", ours, " yd");
            CHECK(ours > panel.yards_above);
            CHECK(ours <= panel.yards_to);
        }
    }
}
