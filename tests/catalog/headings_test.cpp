// What the headings of people's sheets of skeins mean, and cells that say the one above again.
#include "catalog/typed/headings.hpp"
#include "tests/catalog/carried.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace gristwright::catalog;

namespace {

struct Case {
    const char* header;
    Holds holds;
    const char* unit;
};

}  // namespace

TEST_CASE("headings: what a column of skeins holds, in people's words") {
    const Case cases[] = {
        {"Yds", Holds::length, "yds"},
        {"Wt (oz)", Holds::mass, "oz"},
        {"Meterage", Holds::length, ""},
        {"Länge in m", Holds::length, "m"},
        {"Lauflänge", Holds::length, ""},
        {"Gewicht", Holds::mass, ""},
        {"Poids (g)", Holds::mass, "g"},
        {"vikt (g)", Holds::mass, "g"},
        {"grms", Holds::mass, "grms"},
        {"W.P.I.", Holds::wraps, "wpi"},
        {"Length (in)", Holds::length, "in"},
        {"Length, in", Holds::length, "in"},
        {"length in yards", Holds::length, "yards"},
        {"What's in it", Holds::fibre, ""},
        {"Faser", Holds::fibre, ""},
        {"Prep", Holds::preparation, ""},
        {"Fiber preparation", Holds::preparation, ""},
        {"Carded/combed?", Holds::preparation, ""},
        {"kardat/kammat", Holds::preparation, ""},
        {"Vorbereitung", Holds::preparation, ""},
        {"Draw", Holds::draw, ""},
        {"How spun", Holds::draw, ""},
        {"Drafting method", Holds::draw, ""},
        {"Ply", Holds::plies, ""},
        {"plies", Holds::plies, ""},
        {"No. of plies", Holds::plies, ""},
        {"Zwirn", Holds::plies, ""},
        {"Ply twist", Holds::other, ""},
        {"Carded weight (g)", Holds::mass, "g"},
        {"Spun", Holds::nothing_known, ""},
        {"in stash", Holds::nothing_known, ""},
        {"Spun in May", Holds::nothing_known, ""},
        {"Idée", Holds::nothing_known, ""},
        {"Skein no.", Holds::name, ""},
        {"ypp", Holds::other, ""},
        {"yd per lb", Holds::other, ""},
        {"Cost", Holds::other, ""},
        {"Qty", Holds::count, ""},
        {"# skeins", Holds::count, ""},
        {"Number of skeins", Holds::count, ""},
        {"How many hanks", Holds::count, ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.header);
        const auto read = heading_of(c.header);
        CHECK(read.holds == c.holds);
        if (c.holds != Holds::other) CHECK(read.unit == c.unit);
    }
}

TEST_CASE("headings: of each skein, and no rate") {
    for (const char* header : {"yds per skein", "Yards each", "m ea", "metres per ball"}) {
        CAPTURE(header);
        CHECK(heading_of(header).of_each);
        CHECK(heading_of(header).holds == Holds::length);
    }
    CHECK(heading_of("grams per skein").holds == Holds::mass);
    CHECK_FALSE(heading_of("yards per pound").of_each);
    CHECK_FALSE(heading_of("yds").of_each);
}

TEST_CASE("headings: before washing and after it") {
    CHECK(heading_of("Before wash yds").before_washing);
    CHECK(heading_of("yds after bath").finished);
    CHECK_FALSE(heading_of("yds").finished);
}

TEST_CASE("cells: marks that say the one above again, and words that do not") {
    for (const char* same : {"\"", "ditto", "Dito", "same", "-\"-", "''", "do.", "as above"})
        CHECK(is_ditto(same));
    for (const char* other : {"", "-", "n/a", "sample", "same as Tilda's", "5\"", "no"})
        CHECK_FALSE(is_ditto(other));
}

TEST_CASE("totals: rows that sum the others up, and names that only look so") {
    for (const char* total : {"Total", "TOTAL:", "Grand total", "Summe", "summa", "sub-total",
                              "Total 6 sk", "total yds", "Sum of all the skeins"})
        CHECK(names_a_total(total));
    for (const char* name :
         {"Totally teal", "Summer sky", "blue 2", "All Saints", "mean green", ""})
        CHECK_FALSE(names_a_total(name));
}

TEST_CASE("spoken words: a longer text says what one of them does, unless it denies it") {
    using Words = std::vector<std::string>;
    CHECK(carried().spoken.found_in("preparation", "commercial top, predrafted") ==
          Words{"commercial top"});
    CHECK(carried().spoken.found_in("preparation", "Drum-carded batt (3 passes)") ==
          Words{"drum carded batt"});
    CHECK(carried().spoken.found_in("draw", "semi-worsted, mostly") == Words{"semi worsted"});
    for (const char* denied : {"not carded at all", "never combed", "no rolags here"})
        CHECK(carried().spoken.found_in("preparation", denied).empty());
    CHECK(carried().spoken.found_in("preparation", "stopped").empty());
    CHECK(carried().spoken.found_in("preparation", "").empty());
}
