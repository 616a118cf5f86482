// A batch means the same however it is written down, and what is unclear is refused with its place.
#include "catalog/typed/batch_text.hpp"

#include <doctest/doctest.h>

#include "catalog/text/bad_text.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

const Catalogue& carried() {
    static const auto catalogue = built_in();
    return catalogue;
}

std::string complaint(BatchText (*read)(std::string_view, const std::string&), const char* text) {
    try {
        interpret(read(text, "b"), carried());
    } catch (const std::invalid_argument& error) {
        return error.what();
    }
    return "";
}

}  // namespace

TEST_CASE("headers are read liberally and units come from header or cell") {
    for (const char* text :
         {"Skein,Length (yd),Weight (g)\nA,187,38.5\nB,223,45\n",
          "grams;metres;name\n38.5;171;A\n45;204;B\n", "id,Yards,oz\nA,187,1.358\nB,223,1.587\n",
          "name,length,mass\nA,187 yd,38.5g\nB,204 m,45 g\n",
          "\xEF\xBB\xBFHank\tMetres\tGrams\r\nA\t171\t38.5\r\nB\t204\t45\r\n"}) {
        CAPTURE(text);
        const auto read = interpret(read_batch_csv(text, "b"), carried());
        REQUIRE(read.batch.skeins.size() == 2);
        CHECK(read.batch.skeins[0].name == "A");
        CHECK(in_metres(read.batch.skeins[0].length) == near(171, 0.001));
        CHECK(in_grams(read.batch.skeins[0].mass) == near(38.5, 0.001));
        CHECK(in_metres(read.batch.skeins[1].length) == near(204, 0.001));
    }
}

TEST_CASE("a column that is not used is said, one that is missing refused") {
    const auto read = read_batch_csv("name,m,g,dye lot\nA,171,38.5,teal\n", "b");
    REQUIRE(read.notes.size() == 1);
    CHECK(read.notes[0] == "b: column 'dye lot' is not used");
    CHECK(complaint(read_batch_csv, "name,m\nA,171\n") ==
          "b:1: the header needs a column of masses, such as 'Length (yd)' or 'grams'");
}

TEST_CASE("complaints about a table say the row") {
    CHECK(complaint(read_batch_csv, "name,length,g\nA,171,38\n").find("b:2: length: ") == 0);
    CHECK(complaint(read_batch_csv, "name,m,g\nA,171,38\nB,nan,38\n").find("b:3: m: ") == 0);
    CHECK(complaint(read_batch_csv, "name,m,g\nA,171,38\nA,171,38\n") ==
          "b:3: name: two skeins are called 'A'");
    CHECK(complaint(read_batch_csv, "name,m,g\n").find("no skeins") != std::string::npos);
}

TEST_CASE("TOML holds everything") {
    const auto read = interpret(read_batch_toml(R"(
name = "Heron"
preparation = "carded"
draw = "long"
plies = 2
fibre = ["Corriedale 70%", "Merino 30%"]
wraps = "16wpi"
wraps_how = "packed"
variegated = true
scale = "1g"
measured = "on the reel"
[[skein]]
length = "171m"
mass = "38.5g"
[[skein]]
name = "B"
length = "204m"
mass = "45g"
measured = "washed"
[equipment]
heddles = ["30/10cm", "10 epi"]
shafts = 2
)",
                                                "b"),
                                carried());
    CHECK(read.batch.skeins[0].name == "skein 1");
    CHECK(read.batch.skeins[0].state == LengthState::on_reel);
    CHECK(read.batch.skeins[1].state == LengthState::washed);
    CHECK(in_grams(read.batch.measuring.scale_step) == doctest::Approx(1));
    REQUIRE(read.batch.fibre.size() == 2);
    CHECK(read.batch.fibre[1].share == doctest::Approx(0.3));
    CHECK(read.batch.wraps->how == WrapsHow::packed);
    CHECK(read.batch.variegated);
    CHECK(read.owned.heddles.size() == 2);
}

TEST_CASE("mistakes in TOML are named with a suggestion") {
    const std::string skein = "\n[[skein]]\nlength = \"171m\"\nmass = \"38g\"\n";
    const auto heard = [&](const std::string& head) {
        return complaint(read_batch_toml, (head + skein).c_str());
    };
    CHECK(heard("warps = \"16wpi\"") == "b:1: 'warps' is not a key here; did you mean 'wraps'?");
    CHECK(heard("preparation = \"carde\"") ==
          "b:1: preparation: 'carde' is not one of: carded, combed; did you mean 'carded'?");
    CHECK(heard("fibre = \"Corridale\"").find("did you mean 'Corriedale'?") != std::string::npos);
    CHECK(heard("fibre = [\"Corriedale 70%\"]").find("sum to 70 %") != std::string::npos);
    CHECK(heard("plies = 0").find("b:1: plies: '0' is no number of plies from 1 to 12") == 0);
    CHECK(heard("wraps = \"16g\"").find("b:1: wraps: cannot read '16g'") == 0);
    CHECK(heard("wraps_how = \"packed\"").find("but there are none") != std::string::npos);
    CHECK(complaint(read_batch_toml, "name = \"x\"").find("no [[skein]]") != std::string::npos);
    CHECK(complaint(read_batch_toml, "name = ").find("b:1: this is not TOML") == 0);
}

TEST_CASE("what is typed takes the place of what the file says") {
    auto text = read_batch_toml(
        "wraps = \"16wpi\"\ndraw = \"long\"\n[[skein]]\nlength = \"1m\"\nmass = \"1g\"\n", "b");
    BatchText typed;
    typed.fields["wraps"] = {{"14wpi", "--wraps"}};
    text.overlay(typed);
    const auto read = interpret(text, carried());
    CHECK(in_wraps_per_inch(read.batch.wraps->count) == doctest::Approx(14));
    CHECK(read.batch.draw == Draw::long_draw);
    CHECK(read.batch.skeins.size() == 1);
}

TEST_CASE("a staple is a length or a range in one unit") {
    const auto staple = [](const char* text) {
        BatchText batch;
        batch.skeins.push_back({{}, {"10m", ""}, {"2g", ""}, {}});
        batch.fields["staple"] = {{text, "--staple"}};
        return *interpret(batch, carried()).batch.fibre[0].staple_low;
    };
    CHECK(in_millimetres(staple("75mm")) == doctest::Approx(75));
    CHECK(in_millimetres(staple("70-90mm")) == doctest::Approx(70));
    CHECK(in_millimetres(staple("3-4in")) == doctest::Approx(76.2));
    CHECK_THROWS_AS(staple("90-70mm"), std::invalid_argument);
}

TEST_CASE("a key in the wrong table is told where it belongs") {
    const std::string skein = "[[skein]]\nlength = \"171m\"\nmass = \"38.5g\"\n";
    CHECK_THROWS_WITH_AS(read_batch_toml("needles = [\"4mm\"]\n" + skein, "b.toml"),
                         "b.toml:1: 'needles' is not a key here; it belongs under [equipment]",
                         BadText);
    CHECK_THROWS_WITH_AS(read_batch_toml(skein + "[equipment]\nwraps = \"16wpi\"\n", "b.toml"),
                         "b.toml:5: 'wraps' is not a key here; it belongs before the first [table]",
                         BadText);
}
