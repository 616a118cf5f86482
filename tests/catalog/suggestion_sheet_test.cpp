// Sheets of suggestions as people keep them.
#include "catalog/typed/suggestion_sheet.hpp"

#include <doctest/doctest.h>

#include "engine/units/failure.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

std::vector<std::string> keys(const std::vector<std::string>& headers) {
    std::vector<std::string> out;
    for (const auto& column : suggestion_columns(headers, carried().spoken))
        out.push_back(column.key);
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
    CHECK(suggestion_columns({"idea", "needs (yd)"}, carried().spoken)[1].unit == "yd");
}

TEST_CASE("suggestion sheet: a length beside an amount is the article's, alone it is asked") {
    CHECK(keys({"What", "Length", "Amount"}) == Keys{"idea", "size", "needs"});
    CHECK(keys({"What", "Length (in)"}) == Keys{"idea", "size"});
    CHECK_THROWS_AS(suggestion_columns({"What", "Length"}, carried().spoken), Refused);
    CHECK_THROWS_AS(suggestion_columns({"What", "Length (m)"}, carried().spoken), Refused);
}

TEST_CASE("suggestion sheet: a column that is not used is said once") {
    SuggestionSheet sheet("ideas.csv", carried().spoken);
    REQUIRE(sheet.header({"idea", "width", "mood", "needs", "size", "size"}));
    CHECK(sheet.notes() == Keys{"column 'width' is not used: the article keeps its own width",
                                "column 'mood' is not used",
                                "column 'size' is not used: another column holds that"});
}

TEST_CASE("suggestion sheet: who sent an idea is known by many headings") {
    for (const char* head : {"Who", "Name", "By", "From", "Sender", "Suggested by", "Your name",
                             "Submitted by", "Username", "Person"}) {
        CAPTURE(head);
        SuggestionSheet sheet("ideas.csv", carried().spoken);
        REQUIRE(sheet.header({"Idea", head}));
        CHECK(sheet.row({2, {"hat", "Mags"}})->at("from") == "Mags");
    }
}

TEST_CASE("suggestion sheet: 'Who' alone is the sender and perhaps the wearer, and it is said so") {
    SuggestionSheet alone("ideas.csv", carried().spoken);
    REQUIRE(alone.header({"Idea", "Who"}));
    REQUIRE(alone.notes().size() == 1);
    CHECK(alone.notes()[0].starts_with("column 'Who' is taken for who suggested it, and for whom"));
    SuggestionSheet beside("ideas.csv", carried().spoken);
    REQUIRE(beside.header({"Idea", "Who", "From"}));
    CHECK(beside.notes().empty());
    const auto row = beside.row({2, {"hat", "baby", "Mags"}});
    CHECK(row->at("who") == "baby");
    CHECK(row->at("from") == "Mags");
}

TEST_CASE("suggestion sheet: what says it outright goes before what may say it") {
    SuggestionSheet sheet("ideas.csv", carried().spoken);
    REQUIRE(sheet.header({"Comment", "Name", "Idea", "Suggested by"}));
    const auto row = sheet.row({2, {"lovely", "blue hat", "hat", "Mags"}});
    CHECK(row->at("idea") == "hat");
    CHECK(row->at("from") == "Mags");
    CHECK(sheet.notes() == Keys{"column 'Comment' is not used: another column holds that",
                                "column 'Name' is not used: another column holds that"});
}

TEST_CASE("suggestion sheet: a pattern's own figures are known with that word before them") {
    // 'Pattern gauge' was taken for a second column of ideas.
    CHECK(keys({"Project", "Pattern gauge", "Pattern yardage", "Recommended needle", "Qty"}) ==
          Keys{"idea", "gauge", "needs", "needle", ""});
}

TEST_CASE("suggestion sheet: what is left out cell by cell is said once") {
    SuggestionSheet sheet("ideas.csv", carried().spoken);
    REQUIRE(sheet.header({"Idea", "Yards", "Grams", "", "Yardage"}));
    CHECK(sheet.row({2, {"hat", "200", "50", "x", ""}})->at("needs") == "200 yards");
    CHECK(sheet.row({3, {"hat", "300", "90", "y", ""}})->at("needs") == "300 yards");
    CHECK(sheet.row({4, {"hat", "n/a", "?", "", "250"}})->at("needs") == "250 yd");
    CHECK(sheet.row({5, {"hat", "up to 250", "", "", ""}})->at("needs") == "up to 250 yards");
    CHECK(sheet.row({6, {"hat", "250 m", "", "", ""}})->at("needs") == "250 m");
    CHECK(sheet.row({7, {"hat", "350+", "", "", ""}})->at("needs") == "350+ yards");
    CHECK(sheet.notes() ==
          Keys{"column 'Grams' is not used in rows where another column holds that",
               "column 4 has no heading and is not used",
               "column 'Yardage': bare numbers are taken in yd"});
}

TEST_CASE("suggestion sheet: a title 'Suggestions' above the headings is a title") {
    SuggestionSheet sheet("ideas.csv", carried().spoken);
    REQUIRE(sheet.header({"Suggestions", "", ""}));
    CHECK_FALSE(sheet.row({2, {"Idea", "Who from", "Needs"}}));
    CHECK(sheet.columns() == 3);
    CHECK(sheet.row({3, {"hat", "Mags", "200m"}})->at("needs") == "200m");
    SuggestionSheet only("ideas.csv", carried().spoken);
    REQUIRE(only.header({"Suggestions", "", ""}));
    CHECK(only.row({2, {"hat", "", ""}})->at("idea") == "hat");
}

TEST_CASE("suggestion sheet: bare numbers take the heading's unit, and the amount that is there") {
    SuggestionSheet sheet("ideas.csv", carried().spoken);
    REQUIRE_FALSE(sheet.header({"What they said on Sunday", "", ""}));
    REQUIRE(sheet.header({"Idea", "Yards", "Grams"}));
    CHECK(sheet.row({3, {"scarf", "300", ""}})->at("needs") == "300 yards");
    CHECK(sheet.row({4, {"hat", "", "50"}})->at("needs") == "50 grams");
    CHECK(sheet.row({5, {"hat", "1/2 lb", ""}})->at("needs") == "1/2 lb");
}

TEST_CASE("suggestion sheet: a total and a second line of headings are no suggestions") {
    SuggestionSheet sheet("ideas.csv", carried().spoken);
    REQUIRE(sheet.header({"Idea", "Yarn needed", ""}));
    CHECK_FALSE(sheet.row({2, {"", "yards", "size"}}));
    CHECK(sheet.row({3, {"scarf", "300", "60 in"}})->at("size") == "60 in");
    CHECK(sheet.row({4, {"cowl", "200", ""}})->at("needs") == "200 yards");
    CHECK_FALSE(sheet.row({5, {"Total", "500", ""}}));
    CHECK(sheet.notes() == Keys{"line 5: 'Total' is no suggestion and is left out"});
}

TEST_CASE("suggestion sheet: a figure before the way it is measured takes the heading's unit") {
    const auto size = [](const char* heading, const char* cell) {
        SuggestionSheet sheet("ideas.csv", carried().spoken);
        REQUIRE(sheet.header({"idea", heading}));
        const auto row = sheet.row({2, {"hat", cell}});
        return row->contains("size") ? row->at("size") : "";
    };
    CHECK(size("finished dims (in)", "22 head") == "22 in head");
    CHECK(size("size (in)", "60 long x 8 wide") == "60 in long x 8 in wide");
    CHECK(size("size (in)", "60 x 8") == "60 x 8 in");
    CHECK(size("size (cm)", "150") == "150 cm");
    CHECK(size("size (in)", "22") == "22 in");
    CHECK(size("size (in)", "55 cm head") == "55 cm head");
    CHECK(size("size (in)", "22\" head") == "22\" head");
    CHECK(size("size (in)", "shoe 42") == "shoe 42");
    CHECK(size("size (in)", "age 8") == "age 8");
    CHECK(size("size (in)", "adult M") == "adult M");
    CHECK(size("size", "22 head") == "22 head");
}
