// A batch means the same however it is written down, and what is unclear is refused with its place.
#include "catalog/typed/batch_text.hpp"

#include <doctest/doctest.h>

#include "catalog/text/bad_text.hpp"
#include "tests/catalog/carried.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

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
          "Skein name,Skein length (yd),Skein mass (g)\nA,187,38.5\nB,223,45\n",
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

TEST_CASE("the shares of a blend are the whole of it, but for rounding") {
    // Shares that were 4 % off went unnoticed.
    const auto blend = [](const char* shares) {
        return complaint(read_batch_toml,
                         (std::string("fibre = \"") + shares +
                          "\"\n[[skein]]\nname = \"A\"\nlength = \"171m\"\nmass = \"38.5g\"\n")
                             .c_str());
    };
    CHECK(blend("Corriedale 70%, silk 30%").empty());
    CHECK(blend("Corriedale 33.3%, silk 33.3%, alpaca 33.3%").empty());
    for (const char* shares : {"Corriedale 70%, silk 28%", "Corriedale 70%, silk 32%"}) {
        CAPTURE(shares);
        CHECK(blend(shares).find("not 100") != std::string::npos);
    }
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

namespace {

void forget_places(BatchText& text) {
    for (auto& skein : text.skeins) {
        for (auto* one : {&skein.name, &skein.length, &skein.mass, &skein.state}) one->where = "";
        for (auto& [key, texts] : skein.own)
            for (auto& one : texts) one.where = "";
    }
    for (auto& [key, texts] : text.fields)
        for (auto& one : texts) one.where = "";
}

}  // namespace

TEST_CASE("a batch written back as TOML reads as the same texts") {
    auto first = read_batch_toml(R"(
        name = "a \"quoted\" name\nof two lines = \u00e9"
        plies = 3
        variegated = true
        colour = ["teal", "#7a5136"]
        fibre = "70% Merino, 30% 'Silk'"
        [[skein]]
        length = "139m"
        mass = "38.5g"
        [[skein]]
        name = "[[B]]"
        length = "1 1/2 yd"
        mass = "1 oz"
        measured = "on the reel"
        wraps = "14wpi"
        colour = ["teal", "grey"]
        [equipment]
        needles = ["3mm", "US 6"]
        loom_width = "60cm"
    )",
                                 "b");
    auto second = read_batch_toml(toml_of(first), "b");
    forget_places(first), forget_places(second);
    CHECK(first == second);
    REQUIRE(second.skeins.size() == 2);
    CHECK(second.skeins[1].name.text == "[[B]]");
    CHECK(second.fields.at("colour").size() == 2);
    auto sheet = read_batch_csv("name,length,mass\nA,139 m,38.5 g\n", "s");
    auto again = read_batch_toml(toml_of(sheet), "s");
    forget_places(sheet), forget_places(again);
    CHECK(sheet.skeins == again.skeins);
}
