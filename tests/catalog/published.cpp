#include "tests/catalog/published.hpp"

#include <cmath>
#include <stdexcept>

#include "engine/cloth/knitting_constants.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/evidence/swatch.hpp"

using namespace gristwright;

namespace published {
namespace {

Length side(const CaseRow& row, const char* column) { return inches(figure(row, column)); }

Area area_of(const CaseRow& row) { return side(row, "width_in") * side(row, "length_in"); }

// A yarn that this gauge suits: the print tells no weight per yard, and metres need none.
YarnProfile yarn_for(Gauge gauge) {
    YarnProfile yarn;
    const double k = constants::ordinary_tightness.value;
    const double loop = in_millimetres(loop_from_stitches(gauge, Relaxation::full));
    yarn.linear_density = {tex(std::pow(k * loop, 2)), 0.02};
    yarn.washed_gauge = gauge;
    return yarn;
}

YarnProfile yarn_of(double grist) {
    YarnProfile yarn;
    yarn.linear_density = {tex(grist), 0.02};
    for (auto& trait : yarn.traits) trait.spread = 0.1;
    return yarn;
}

// Laid aside whole: counted over its width, weighed with its sides.
KnittedSwatch whole_piece(const CaseRow& row) {
    KnittedSwatch out;
    out.stitches = {figure(row, "stitches"), side(row, "width_in")};
    out.width = side(row, "width_in");
    out.length = side(row, "length_in");
    out.mass = ounces(figure(row, "amount_used_oz"));
    return out;
}

const KnitFabric& fabric_named(const Fabrics& fabrics, const char* name) {
    if (const auto* found = fabrics.knitted_named(name)) return *found;
    throw std::out_of_range(name);
}

}  // namespace

// K60, a vest: back 16.3 in and two fronts of 9 in. No row of ours is a dropped ladder; it is taken
// as the stocking stitch it is worked in. K61, a bag: its coned base is about 60 square inches.
const std::vector<Article>& articles() {
    static const std::vector<Article> all{{"K55", "trinity", 18 * 18},
                                          {"K57", "cables", 12 * 18},
                                          {"K60", "stocking stitch", (16.3 + 2 * 9) * 26.5},
                                          {"K61", "stocking stitch", 22.9 * 15 + 60}};
    return all;
}

CaseRow knit_case(const std::string& id) {
    for (const auto& row : read_cases("knit_cases_open.csv"))
        if (row.at("id") == id) return row;
    throw std::out_of_range("no case " + id);
}

Estimate<Length> predicted(const Article& article, const Fabrics& fabrics) {
    const auto yarn = yarn_for(stitches_per_inch(figure(knit_case(article.id), "gauge_st_per_in")));
    const auto cloth =
        knit_cloth(yarn, fabric_named(fabrics, article.fabric), Firmness::ordinary, {});
    const auto area = square_metres(article.square_inches * 0.0254 * 0.0254);
    return {cloth.metres_per_area.mid * area, cloth.metres_per_area.spread};
}

bool meets_print(const Estimate<Length>& yarn, double most_yards) {
    return in_yards(yarn.high()) > most_yards - skein_yards && in_yards(yarn.low()) <= most_yards;
}

Estimate<double> sweater_ounces(double tex_guessed, const Fabrics& fabrics) {
    const auto& garter = fabric_named(fabrics, "garter");
    const auto sweater = knit_case("K01");
    const auto yarn = yarn_of(tex_guessed);
    auto known = yarn.evidence;
    observe(whole_piece(knit_case("K02")), garter, yarn, known);
    // The sweater is knitted tighter, on the same needles: its own printed gauge.
    const auto printed = stitches_per_inch(figure(sweater, "gauge_st_per_in"));
    known.gauge = Estimate<Gauge>{printed / garter.stitches, 0.02};
    const auto cloth = knit_cloth(informed(yarn, known), garter, Firmness::ordinary, {});
    const auto needs = cloth.metres_per_area.mid * area_of(sweater) * yarn.linear_density.mid;
    return {in_ounces(needs), cloth.metres_per_area.spread};
}

Estimate<Length> second_shawl(const Fabrics& fabrics) {
    const auto& lace = fabric_named(fabrics, "eyelet lace");
    const auto first = knit_case("K70");
    const auto cloth = knit_cloth(yarn_of(60), lace, Firmness::lace, {});
    const double per_area = yards(figure(first, "amount_used_yd")).si() / area_of(first).si();
    const auto known =
        posterior(Estimate<double>{1, cloth.metres_per_area.spread},
                  {per_area / cloth.metres_per_area.mid.si(), constants::swatch_and_rest});
    return {cloth.metres_per_area.mid * area_of(knit_case("K73")) * known.mid,
            together(known.spread, cloth.metres_per_area.spread)};
}

}  // namespace published
