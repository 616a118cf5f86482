#include "catalog/text/csv.hpp"

#include <doctest/doctest.h>

#include "catalog/text/bad_text.hpp"

using namespace gristwright::catalog;

TEST_CASE("what spreadsheets write is read alike") {
    for (const char* text : {"a,b\n1,\"x, y\"\n",
                             "\xEF\xBB\xBF"
                             "a,b\r\n1,\"x, y\"\r\n",
                             "a;b\n1;x, y\n", "a\tb\n1\tx, y", "a,b\n\n,\n1,\"x, y\"\n\n"}) {
        CAPTURE(text);
        const auto csv = read_csv(text, "t.csv");
        REQUIRE(csv.headers == std::vector<std::string>{"a", "b"});
        REQUIRE(csv.rows.size() == 1);
        CHECK(csv.rows[0].fields == std::vector<std::string>{"1", "x, y"});
    }
}

TEST_CASE("the separator is the one of most lines, not of a list in the first cell") {
    const auto csv = read_csv("skein, length, mass;b\n1;2\n3;4\n", "t.csv");
    CHECK(csv.headers == std::vector<std::string>{"skein, length, mass", "b"});
    CHECK(csv.rows.size() == 2);
}

TEST_CASE("a short record is filled up and a long one refused by its number") {
    CHECK(read_csv("a,b,c\n1\n", "t.csv").rows[0].fields.size() == 3);
    CHECK_THROWS_WITH_AS(read_csv("a\n1\n1,2\n", "t.csv"),
                         "t.csv:3: 2 fields, but the header names 1", BadText);
    CHECK_THROWS_AS(read_csv("", "t.csv"), BadText);
}

TEST_CASE("quotes hold quotes and line ends") {
    const auto csv = read_csv("a\n\"one \"\"two\"\"\nthree\"\n", "t.csv");
    CHECK(csv.rows[0].fields[0] == "one \"two\"\nthree");
    CHECK(csv.column("a") == 0);
    CHECK(csv.column("b") == Csv::npos);
}
