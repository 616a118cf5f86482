// Published pieces knitted with two strands held together (finished_open.csv, `strands` 2): the
// yarn doubled as --as double does it, against the needle and the metres that were published.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/cloth/knitting.hpp"
#include "engine/project/role.hpp"
#include "engine/yarn/profile.hpp"
#include "tests/catalog/published.hpp"

using namespace gristwright;
using namespace published;

namespace {

// m/g of the single strand: as published, else what finished_as.csv takes for its class.
double grist_of(const CaseRow& row) {
    if (const double stated = figure_or_zero(row, "grist_m_per_g"); stated > 0) return stated;
    const auto& weight = row.at("weight_stated");
    if (weight.rfind("lace", 0) == 0) return 9;
    return weight.rfind("fingering", 0) == 0 ? 4.2 : 2.3;
}

YarnProfile single(const CaseRow& row) {
    Batch batch;
    batch.skeins = {{"A", metres(100 * grist_of(row)), grams(100), LengthState::washed}};
    batch.plies = 2;
    return profile(batch, catalog::built_in().yarn);
}

YarnProfile doubled(const CaseRow& row) {
    Batch batch;
    batch.skeins = {{"A", metres(100 * grist_of(row)), grams(100), LengthState::washed}};
    batch.plies = 2;
    return profile(two_strands(batch, Role::doubled), catalog::built_in().yarn);
}

// What the piece was knitted for: the cap with the tight turned-up rib firmly, lace pinned out.
Firmness purpose_of(const CaseRow& row) {
    if (row.at("fabric_kind") == "lace") return Firmness::lace;
    return row.at("fabric_kind") == "rib" ? Firmness::sock : Firmness::ordinary;
}

// How far the needle for that yarn is from the one that was used, as a ratio of at least 1.
double away(const YarnProfile& yarn, const CaseRow& row) {
    const auto cloth = knit_cloth(yarn, KnitFabric{}, purpose_of(row), {});
    const double ratio = in_millimetres(cloth.needle) / figure_or_zero(row, "needle_mm");
    return std::max(ratio, 1 / ratio);
}

}  // namespace

TEST_CASE("pieces published as held double: their needle is the doubled yarn's, not the single's") {
    int seen = 0;
    for (const auto& row : read_cases("finished_open.csv")) {
        if (row.at("strands") != "2" || figure_or_zero(row, "needle_mm") == 0) continue;
        ++seen;
        CAPTURE(row.at("id"));
        CHECK(away(doubled(row), row) < std::sqrt(2.0));
        CHECK(away(doubled(row), row) < away(single(row), row));
    }
    CHECK(seen == 4);
}

// FK008: about 754 m of laceweight, held double, in a lace scarf of 33 x 99 cm; FK035: one skein of
// 100 g of fingering, bought whole, held double in a textured cowl of 0.1265 m2.
TEST_CASE("pieces published as held double: half the single yarn's metres make their area") {
    const auto fabrics = catalog::built_in().fabrics;
    for (const auto& row : read_cases("finished_open.csv")) {
        const auto& id = row.at("id");
        if (id != "FK008" && id != "FK035") continue;
        const bool whole_skein = id == "FK035";
        const auto& fabric = *fabrics.knitted_named(whole_skein ? "moss" : "feather and fan");
        const auto cloth = knit_cloth(doubled(row), fabric, purpose_of(row), {});
        const Estimate<Length> ours{
            Length::from_si(cloth.metres_per_area.mid.si() * figure_or_zero(row, "area_m2")),
            cloth.metres_per_area.spread};
        const double strands_of_two = (whole_skein ? figure_or_zero(row, "amount_g") * grist_of(row)
                                                   : figure_or_zero(row, "amount_m")) /
                                      2;
        CAPTURE(id);
        CHECK(ours.low().si() < strands_of_two);
        // A whole skein is an upper bound, of which a good half was needed: else two from one.
        CHECK((whole_skein ? ours.mid.si() * 2 : ours.high().si()) > strands_of_two);
    }
}
