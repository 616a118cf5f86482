// Sheets of suggestions as people keep them.
#include "catalog/typed/suggestion_sheet.hpp"

#include <doctest/doctest.h>

#include "engine/units/failure.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

std::vector<std::string> keys(const std::vector<std::string>& headers) {
    std::vector<std::string> out;
    for (const auto& column : suggestion_columns(headers)) out.push_back(column.key);
    return out;
}

using Keys = std::vector<std::string>;

}  // namespace

TEST_CASE("suggestion sheet: headings are read in people's words, with and without a unit") {
    CHECK(keys({"Suggestion", "Yardage", "Weight class", "Tension", "From", "mood"}) ==
          Keys{"idea", "needs", "weight", "gauge", "from", ""});
    CHECK(keys({"What", "Yards", "Who for?"}) == Keys{"idea", "needs", "who"});
    CHECK(keys({"IDEA", "Yarn (yd)", "Finished length", "For whom"}) ==
          Keys{"idea", "needs", "size", "who"});
    CHECK(keys({"idea", "grams", "needle size"}) == Keys{"idea", "needs", "needle"});
    CHECK(keys({"idea", "Weight (g)"}) == Keys{"idea", "needs"});
    CHECK(suggestion_columns({"idea", "needs (yd)"})[1].unit == "yd");
}

TEST_CASE("suggestion sheet: a length beside an amount is the article's, alone it is asked") {
    CHECK(keys({"What", "Length", "Amount"}) == Keys{"idea", "size", "needs"});
    CHECK(keys({"What", "Length (in)"}) == Keys{"idea", "size"});
    CHECK_THROWS_AS(suggestion_columns({"What", "Length"}), Refused);
    CHECK_THROWS_AS(suggestion_columns({"What", "Length (m)"}), Refused);
}

TEST_CASE("suggestion sheet: a column that is not used is said once") {
    SuggestionSheet sheet("ideas.csv");
    REQUIRE(sheet.header({"idea", "width", "mood", "needs", "size", "size"}));
    CHECK(sheet.notes() == Keys{"column 'width' is not used: the article keeps its own width",
                                "column 'mood' is not used",
                                "column 'size' is not used: another column holds that"});
}

TEST_CASE("suggestion sheet: bare numbers take the heading's unit, and the amount that is there") {
    SuggestionSheet sheet("ideas.csv");
    REQUIRE_FALSE(sheet.header({"What they said on Sunday", "", ""}));
    REQUIRE(sheet.header({"Idea", "Yards", "Grams"}));
    CHECK(sheet.row({3, {"scarf", "300", ""}})->at("needs") == "300 yards");
    CHECK(sheet.row({4, {"hat", "", "50"}})->at("needs") == "50 grams");
    CHECK(sheet.row({5, {"hat", "1/2 lb", ""}})->at("needs") == "1/2 lb");
}

TEST_CASE("suggestion sheet: a total and a second line of headings are no suggestions") {
    SuggestionSheet sheet("ideas.csv");
    REQUIRE(sheet.header({"Idea", "Yarn needed", ""}));
    CHECK_FALSE(sheet.row({2, {"", "yards", "size"}}));
    CHECK(sheet.row({3, {"scarf", "300", "60 in"}})->at("size") == "60 in");
    CHECK(sheet.row({4, {"cowl", "200", ""}})->at("needs") == "200 yards");
    CHECK_FALSE(sheet.row({5, {"Total", "500", ""}}));
    CHECK(sheet.notes() == Keys{"line 5: 'Total' is no suggestion and is left out"});
}
