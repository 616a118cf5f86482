// Published articles whose yarn is told in lengths, predicted with the reviewed fabric table.
#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "catalog/catalogue.hpp"
#include "tests/cases.hpp"

using namespace gristwright;

namespace {

constexpr double skein_yards = 70;  // all four are in a rug yarn sold so

struct Article {
    const char* id;
    const char* fabric;    // the row of our table nearest to what the pattern calls it
    double square_inches;  // width x length of the print, and what its note adds
};

// American Thread Co. Star Book 225 (Project Gutenberg 69979); knit_cases_open.csv has the print.
// K60, a vest: back 16.3 in and two fronts of 9 in. No row of ours is a dropped ladder; it is taken
// as the stocking stitch it is worked in. K61, a bag: its coned base is about 60 square inches.
const std::vector<Article> articles{{"K55", "trinity", 18 * 18},
                                    {"K57", "cables", 12 * 18},
                                    {"K60", "stocking stitch", (16.3 + 2 * 9) * 26.5},
                                    {"K61", "stocking stitch", 22.9 * 15 + 60}};

// A yarn that this gauge suits: the print tells no weight per yard, and metres need none.
YarnProfile yarn_for(Gauge gauge) {
    YarnProfile yarn;
    const double k = tightness_band(Firmness::ordinary).middle();
    const double loop = in_millimetres(loop_from_stitches(gauge, Relaxation::full));
    yarn.linear_density = {tex(std::pow(k * loop, 2)), 0.02};
    yarn.washed_gauge = gauge;
    return yarn;
}

Estimate<Length> predicted(const Article& article, const CaseRow& row, const Fabrics& fabrics) {
    const auto yarn = yarn_for(stitches_per_inch(std::stod(row.at("gauge_st_per_in"))));
    const auto* fabric = fabrics.knitted_named(article.fabric);
    REQUIRE(fabric != nullptr);
    const auto cloth = knit_cloth(yarn, *fabric, Firmness::ordinary, {});
    REQUIRE(cloth.from_swatch);
    const auto area = square_metres(article.square_inches * 0.0254 * 0.0254);
    return {cloth.metres_per_area.mid * area, cloth.metres_per_area.spread};
}

// What the print allows: the last skein was begun.
bool overlaps(const Estimate<Length>& yarn, double most_yards) {
    return in_yards(yarn.high()) > most_yards - skein_yards && in_yards(yarn.low()) <= most_yards;
}

}  // namespace

TEST_CASE("articles in whole skeins: our 90 % range meets what the print allows") {
    const auto fabrics = catalog::built_in().fabrics;
    std::set<std::string> missed;
    for (const auto& row : read_cases("knit_cases_open.csv"))
        for (const auto& article : articles) {
            if (row.at("id") != article.id) continue;
            const double most = std::stod(row.at("amount_used_yd"));
            const auto ours = predicted(article, row, fabrics);
            if (!overlaps(ours, most)) missed.insert(row.at("id"));
            MESSAGE(row.at("id"), ": predicted ", in_yards(ours.mid), " yd (", in_yards(ours.low()),
                    " to ", in_yards(ours.high()), "), printed above ", most - skein_yards, " to ",
                    most);
        }
    // Three of four are met, where 80 % is wanted: too few cases to say more. The vest wants 1.34
    // to 1.51 times what plain cloth of its area takes: ladders let run between the stitches, bands
    // and seams, which we have no figure for. A figure made to fit this one row would prove
    // nothing.
    CHECK(missed == std::set<std::string>{"K60"});
    WARN(double(articles.size() - missed.size()) >= 0.8 * double(articles.size()));
}
