#include "engine/yarn/wool_grade.hpp"

#include <doctest/doctest.h>

#include "tests/cases.hpp"

using namespace gristwright;

namespace {

// USDA wool grades (ASTM D3991; 7 CFR 31), as wool_grades.csv has them.
std::vector<WoolGrade> usda() {
    std::vector<WoolGrade> out;
    for (const auto& row : read_cases("wool_grades.csv"))
        out.push_back({row.at("blood"),
                       row.at("count"),
                       microns(std::stod(row.at("micron_lo"))),
                       microns(std::stod(row.at("micron_hi"))),
                       {},
                       row.at("source")});
    return out;
}

}  // namespace

TEST_CASE("both ends of every USDA grade are in it, and no hundredth of a micron falls between") {
    const auto table = usda();
    REQUIRE(table.size() > 8);
    for (std::size_t i = 0; i < table.size(); ++i) {
        CHECK(wool_grade(table, table[i].low) == &table[i]);
        CHECK(wool_grade(table, table[i].high) == &table[i]);
        if (i == 0) continue;
        const auto gap = in_microns(table[i].low) - in_microns(table[i - 1].high);
        CHECK(gap < 0.011);
    }
    for (int thousandths = 17'700; thousandths <= 34'390; thousandths += 3)
        CHECK(wool_grade(table, microns(thousandths / 1000.0)) != nullptr);
}

TEST_CASE("finer and coarser than the table is no grade") {
    CHECK(wool_grade(usda(), microns(16)) == nullptr);
    CHECK(wool_grade(usda(), microns(60)) == nullptr);
    CHECK(wool_grade({}, microns(25)) == nullptr);
}
