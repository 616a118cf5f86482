// Every complaint about a template names file, line and key, and says what would be right.
#include "catalog/reference/template_text.hpp"

#include <doctest/doctest.h>

#include "catalog/reference/catalogue.hpp"
#include "catalog/text/bad_text.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

const std::string good = R"(title   = "Plain square"
article = "square"
about   = "A square."
craft   = "knitted"
skill   = "first project"
touches = "nothing"
[size]
measure  = "side"
smallest = "10cm"
ideal    = "20cm"
largest  = "12in"
[cloth]
weights  = ["fine", "bulky"]
firmness = "ordinary"
[[piece]]
name   = "square"
shape  = "rectangle"
width  = "20cm"
length = "20cm"
fabric = "garter"
grows  = "both"
[wants]
wear = [0.4, 0.5]
[words]
steps = ["Cast on {square.stitches} with {needle} needles, work {square.rows} rows."]
)";

Template read(const std::string& text) {
    static const auto fabrics = built_in().fabrics;
    return read_template(text, "plain-square", "plain-square.toml", fabrics);
}

std::string with(const std::string& from, const std::string& to) {
    auto text = good;
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

std::string complaint(const std::string& text) {
    try {
        read(text);
    } catch (const BadText& error) {
        return error.what();
    }
    return "";
}

}  // namespace

TEST_CASE("a good template is read whole") {
    const auto t = read(good);
    CHECK(t.title == "Plain square");
    CHECK(in_centimetres(t.largest) == doctest::Approx(30.48));
    CHECK(t.finest == 2);
    CHECK(t.thickest == 5);
    CHECK(t.pieces.size() == 1);
    CHECK(t.wish(Asked::wear).at_least == 0.4);
    CHECK(t.wish(Asked::drape).weight == 0);
}

TEST_CASE("complaints name file, line and key, and what would be right") {
    struct Case {
        const char *from, *to, *said;
    };
    for (const auto& [from, to, said] : {
             Case{"\"knitted\"", "\"kniitted\"",
                  "plain-square.toml:4: craft: 'kniitted' is not one of: knitted, woven"},
             Case{"title   =", "titel   =", "plain-square.toml:1: title: is missing"},
             Case{"wear = ", "waer = ",
                  "plain-square.toml:23: [wants] waer: is not a key here; did you mean 'wear'?"},
             Case{"\"garter\"", "\"gartre\"",
                  "plain-square.toml:20: [[piece]] 1 fabric: 'gartre' "
                  "is not one of: stocking stitch, garter"},
             Case{"\"20cm\"\nlargest", "\"20\"\nlargest",
                  "plain-square.toml:10: [size] ideal: cannot read '20': a length needs a unit"},
             Case{"\"20cm\"\nlargest", "\"90cm\"\nlargest",
                  "plain-square.toml:10: [size] ideal: must lie between smallest and largest"},
             Case{"[0.4, 0.5]", "[0.4, 5]",
                  "plain-square.toml:23: [wants] wear: both numbers are from 0 to 1"},
             Case{"[0.4, 0.5]", "[0.4]", "[wants] wear: must be 2 numbers in brackets"},
             Case{"{square.rows}", "{sqare.rows}",
                  "plain-square.toml:25: [words] steps: '{sqare.rows}' cannot be filled in"},
             Case{"{needle}", "{heddle}", "'{heddle}' cannot be filled in"},
             Case{"{needle}", "{needle", "cannot be filled in"},
             Case{"\"rectangle\"", "\"hexagon\"", "[[piece]] 1 shape: 'hexagon' is not one of"},
             Case{"[\"fine\", \"bulky\"]", "[\"bulky\", \"fine\"]", "the finest comes first"},
             Case{"\"garter\"", "\"garter\"\nnarrow_first = true",
                  "[[piece]] 1 narrow_first: only a taper has a narrow end"},
             Case{"[[piece]]", "[piece]", "piece: must be tables: [[piece]]"},
             Case{"[size]", "worked = [\"sqare\"]\n[size]",
                  "plain-square.toml:7: worked: 'sqare' is not the name of a piece"},
             Case{"[size]", "worked = [\"square\", \"square\", \"square\"]\n[size]",
                  "plain-square.toml:7: worked: the square is named 3 times"},
             Case{"[[piece]]", "[[piece", "plain-square.toml:15: this is not TOML"},
         }) {
        CAPTURE(to);
        const auto heard = complaint(with(from, to));
        CHECK_MESSAGE(heard.find(said) != std::string::npos, heard);
    }
}

TEST_CASE("a woven piece must be a rectangle and names a weave") {
    auto woven = with("\"knitted\"", "\"woven\"");
    CHECK(complaint(woven).find("spacing: is missing") != std::string::npos);
}

TEST_CASE("a thing for a baby with holes, fringe or cords is refused") {
    const auto baby = [](const std::string& text) {
        auto out = text;
        return out.insert(out.find("[size]"), "for_baby = true\n");
    };
    CHECK(complaint(baby(good)).empty());
    CHECK(complaint(baby(with("\"garter\"", "\"mesh lace\"")))
              .find("no holes, floats or loose loops") != std::string::npos);
    for (const char* cord :
         {"a fringe", "two cords", "a ribbon", "ties", "a drawstring", "tassels"})
        CHECK(complaint(baby(with("rows.\"", std::string("rows; add ") + cord + ".\"")))
                  .find("no cords of any kind, and a step says") != std::string::npos);
}

TEST_CASE("text in a template is text: nothing in it drives the terminal") {
    for (const char* bad :
         {"\\u001b[31mred", "\\u0007", "\\u009b2J", "\\u202egnol", "\\u2066x", "\\u007f"})
        for (const auto& [from, to] : std::vector<std::pair<std::string, std::string>>{
                 {"Plain square", bad},
                 {"\"A square.\"", std::string("\"") + bad + "\""},
                 {"\"side\"", std::string("\"") + bad + "\""},
                 {"\"square\"\nshape", std::string("\"") + bad + "\"\nshape"},
                 {"work {square.rows} rows.", bad}}) {
            const auto said = complaint(with(from, to));
            INFO(said);
            CHECK(said.find("is not to be read but to drive the terminal") != std::string::npos);
        }
    const auto t = read(with("\"A square.\"", "\"\"\"A\nsquare\tof\nlines.\"\"\""));
    CHECK(t.about == "A square of lines.");
}
