// Plies, preparation and draw in people's words and tongues, in a file's list and in a sheet.
#include <doctest/doctest.h>

#include <string>

#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/headings.hpp"
#include "catalog/typed/ply_reading.hpp"
#include "engine/units/failure.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

Batch of_sheet(const std::string& text) {
    return interpret(read_batch_csv(text, "s.csv"), carried()).batch;
}

}  // namespace

TEST_CASE("plies: a number and the word for a strand, in several tongues") {
    struct Case {
        const char* text;
        int plies;
    };
    const Case cases[] = {
        {"2-fach", 2},        {"3fach", 3},         {"2-f\u00E4dig", 2}, {"2-tr\u00E5digt", 2},
        {"3 tr\u00E5dar", 3}, {"2 fils retors", 2}, {"2 brins", 2},      {"2-fach verzwirnt", 2},
        {"13-fach", 0},       {"2 fach blau", 0},   {"fach", 0},
    };
    for (const auto& c : cases) {
        CAPTURE(c.text);
        CHECK(count_of_plies(c.text, carried().spoken) == c.plies);
    }
}

TEST_CASE("plies: words of one row and another that mean the same are no contradiction") {
    const auto read = of_sheet(
        "no,m,g,Zwirn,Vorbereitung\n1,200,100,2-fach,Kammzug\n2,190,95,zweifach,combed top\n"
        "3,185,94,2,top\n");
    CHECK(read.plies == 2);
    CHECK(read.preparation == Preparation::combed);
}

TEST_CASE("preparation: rows that differ are asked, by both their lines") {
    const std::string sheet =
        "no,m,g,Prep,Draw\n1,200,100,rolags,long draw\n2,190,95,combed top,long draw\n";
    CHECK_THROWS_WITH_AS(of_sheet(sheet),
                         doctest::Contains("s.csv:3: Prep: 'combed top', but s.csv:2: Prep: "
                                           "'rolags': which?"),
                         Refused);
    CHECK_THROWS_WITH_AS(of_sheet("no,m,g,Draw\n1,200,100,long draw\n2,190,95,short forward\n"),
                         doctest::Contains("s.csv:3: Draw: "), Refused);
}

TEST_CASE("a list of plies in a file is one of the batch only where all mean the same") {
    const auto of_file = [](const char* plies) {
        const auto text =
            std::string("plies = ") + plies + "\n[[skein]]\nlength = \"200m\"\nmass = \"100g\"\n";
        return interpret(read_batch_toml(text, "b.toml"), carried()).batch.plies;
    };
    CHECK(of_file("\"2-ply\"") == 2);
    CHECK(of_file("[\"2\", \"two\"]") == 2);
    CHECK_THROWS_WITH_AS(of_file("[\"2\", \"3\"]"), doctest::Contains("which?"), Refused);
}

TEST_CASE("cells in which nothing is said are not given") {
    for (const char* cell : {"?", "-", "n/a", "unknown", "not sure"}) CHECK(says_nothing(cell));
    for (const char* cell : {"2", "rolags", "no"}) CHECK_FALSE(says_nothing(cell));
    const auto read = of_sheet("no,m,g,WPI,Fibre,Ply\n1,200,100,?,n/a,-\n2,190,95,12,BFL,2\n");
    CHECK(read.plies == 2);
    CHECK(read.fibre.at(0).name == "Bluefaced Leicester");
    const auto none = of_sheet("no,m,g,Ply\n1,200,100,?\n");
    CHECK(none.plies == Batch{}.plies);
}

TEST_CASE("what it was spun on is no draw, and it is said") {
    for (const char* cell : {"wheel", "drop spindle", "e-spinner"}) CHECK(names_a_tool(cell));
    for (const char* cell : {"long draw", "wheel, long draw", "on"})
        CHECK_FALSE(names_a_tool(cell));
    const auto text =
        read_batch_csv("no,m,g,How spun\n1,200,100,wheel\n2,190,95,spindle\n", "s.csv");
    REQUIRE(text.notes.size() == 1);
    CHECK(text.notes[0] == "s.csv: column 'How spun' says nothing of the draw");
    CHECK(interpret(text, carried()).batch.draw == Batch{}.draw);
}
