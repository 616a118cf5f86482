#include "engine/cloth/needle.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/cases.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

// The rows of the weight table that state both ends of gauge and needle.
std::vector<CaseRow> whole_classes() {
    std::vector<CaseRow> rows;
    for (auto& row : read_cases("weight_classes.csv"))
        if (row["number"] <= "5") rows.push_back(row);
    return rows;
}

Length loop_of_class(const CaseRow& row) {
    const double per_4in = middle(row, "st_per_4in_lo", "st_per_4in_hi");
    return loop_from_stitches(stitches_per_inch(per_4in / 4), Relaxation::full);
}

Length ordinary_needle(LinearDensity yarn) {
    return needle_for(loop_from_stitches(gauge_by_grist(yarn).mid, Relaxation::full));
}

double wanted(Firmness purpose, double metres_per_gram) {
    const auto yarn = tex(1000 / metres_per_gram);
    return in_millimetres(needle_wanted(purpose, ordinary_needle(yarn), yarn));
}

}  // namespace

TEST_CASE("needle: the fit to the weight table is the least-squares line, residual under 0.3 mm") {
    double n = 0, x = 0, y = 0, xx = 0, xy = 0;
    for (const auto& row : whole_classes()) {
        const double loop = in_millimetres(loop_of_class(row));
        const double needle = middle(row, "needle_mm_lo", "needle_mm_hi");
        n += 1, x += loop, y += needle, xx += loop * loop, xy += loop * needle;
        CHECK(std::abs(in_millimetres(needle_for(millimetres(loop))) - needle) < 0.3);
    }
    const double slope = (n * xy - x * y) / (n * xx - x * x);
    const double ours =
        in_millimetres(needle_for(millimetres(21))) - in_millimetres(needle_for(millimetres(20)));
    CHECK(ours == near(slope, 0.002));
}

TEST_CASE("a needle's loop is the line read backwards") {
    CHECK(in_millimetres(needle_for(loop_on(millimetres(3.25)))) == Approx(3.25));
}

// The lace row of weight_classes.csv begins at 4.8 m/g; yarn sold for lace has 8 m/g and more.
TEST_CASE("laceweight knitted plain has the trade's 33 to 40 stitches, thick yarn its 7 to 15") {
    const auto stitches = [](double metres_per_gram) {
        return in_stitches_per_10cm(gauge_by_grist(tex(1000 / metres_per_gram)).mid);
    };
    for (const double grist : {8.0, 9.0, 12.0, 15.0}) {
        CAPTURE(grist);
        CHECK(stitches(grist) > 33);
        CHECK(stitches(grist) < 40);
    }
    CHECK(stitches(1.0) == near(13.5, 0.05));
    CHECK(stitches(0.6) > 7);
    CHECK(stitches(0.6) < 11);
    for (double grist = 0.3; grist < 20; grist *= 1.1)
        CHECK(stitches(grist * 1.1) > stitches(grist));
}

// finished_open.csv: lace and shawls on 3.5 to 5 mm from 2.4 to 8 m/g; socks on 2.25 to 3 mm.
TEST_CASE("published shawls and socks: the needle a purpose wants lies among theirs") {
    for (const double grist : {2.4, 3.4, 4.7, 5.8, 8.0}) {
        CAPTURE(grist);
        CHECK(wanted(Firmness::lace, grist) > 3.5);
        CHECK(wanted(Firmness::lace, grist) < 5.0);
    }
    const double slope =
        std::log(wanted(Firmness::lace, 8) / wanted(Firmness::lace, 4)) / std::log(2);
    CHECK(slope > -0.2);
    CHECK(wanted(Firmness::sock, 4.2) == near(2.25, 0.1));
    CHECK(wanted(Firmness::sock, 2.5) == near(3.0, 0.1));
}

TEST_CASE("at any grist lace is looser than drapey, drapey than ordinary, ordinary than socks") {
    for (double grist = 0.5; grist < 20; grist *= 1.2) {
        CAPTURE(grist);
        CHECK(wanted(Firmness::lace, grist) > wanted(Firmness::drapey, grist));
        CHECK(wanted(Firmness::drapey, grist) > wanted(Firmness::ordinary, grist));
        CHECK(wanted(Firmness::ordinary, grist) > wanted(Firmness::firm, grist));
        CHECK(wanted(Firmness::firm, grist) > wanted(Firmness::sock, grist));
        // Finer yarn, finer needles.
        CHECK(wanted(Firmness::lace, grist * 1.2) < wanted(Firmness::lace, grist));
    }
}

TEST_CASE("the nearest size that is sold or owned") {
    CHECK(nearest_needle(millimetres(1.1), {}) == millimetres(1.0));
    CHECK(nearest_needle(millimetres(4.2), {}) == millimetres(4.0));
    CHECK(nearest_needle(millimetres(4.2), {millimetres(5), millimetres(3)}) == millimetres(5));
    CHECK(needle_serves(millimetres(4.0), millimetres(4.2), Firmness::ordinary));
    CHECK(needle_serves(millimetres(5.0), millimetres(4.2), Firmness::lace));
    CHECK_FALSE(needle_serves(millimetres(5.0), millimetres(4.2), Firmness::ordinary));
    CHECK_FALSE(needle_serves(millimetres(1.0), millimetres(0.5), Firmness::sock));
}
