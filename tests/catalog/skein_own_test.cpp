// What a skein says of itself, in each of the ways to write it down.
#include "catalog/typed/skein_own.hpp"

#include <doctest/doctest.h>

#include "catalog/reference/catalogue.hpp"
#include "engine/units/reading.hpp"
#include "engine/yarn/kinds.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

MeasuredBatch read_toml(const std::string& text) {
    return interpret(read_batch_toml(text, "b.toml"), built_in());
}
MeasuredBatch read_csv(const std::string& text) {
    return interpret(read_batch_csv(text, "b.csv"), built_in());
}
MeasuredBatch typed(std::initializer_list<const char*> skeins) {
    BatchText text;
    for (const auto* skein : skeins)
        for (const auto& one : read_skeins_said(skein, "--skein", carried().spoken))
            text.skeins.push_back(one);
    return interpret(text, built_in());
}

template <class Read>
std::string heard(Read read) {
    try {
        read();
    } catch (const Refused& error) {
        return error.what();
    }
    return "";
}

bool holds(const std::string& text, const char* part) { return text.find(part) != text.npos; }

}  // namespace

TEST_CASE("wraps, fibre and colour of a skein, in a file, in a sheet and typed, are the same") {
    const MeasuredBatch read[] = {
        read_toml("[[skein]]\nlength = \"200m\"\nmass = \"50g\"\nwraps = \"14wpi\"\n"
                  "fibre = [\"Merino 70%\", \"silk 30%\"]\ncolour = \"Teal\"\n"
                  "[[skein]]\nlength = \"200m\"\nmass = \"50g\"\nwraps = \"10wpi\"\n"
                  "fibre = \"BFL\"\ncolour = \"grey\"\n"),
        read_csv("Skein,Length (m),grams,WPI,Fibre,Colour\n"
                 "A,200,50,14,merino/silk 70/30,teal\nB,200,50,10,BFL,grey\n"),
        typed({"200m/50g wraps 14wpi fibre merino/silk 70/30 colour teal",
               "200m/50g, wraps 10wpi, fiber BFL; color grey"})};
    for (const auto& one : read) {
        const auto& skeins = one.batch.skeins;
        REQUIRE(skeins.size() == 2);
        CHECK(in_wraps_per_inch(skeins[0].wraps->count) == doctest::Approx(14));
        CHECK(in_wraps_per_inch(skeins[1].wraps->count) == doctest::Approx(10));
        REQUIRE(skeins[0].fibre.size() == 2);
        CHECK(skeins[0].fibre[0].name == "Merino");
        CHECK(skeins[0].fibre[0].share == doctest::Approx(0.7));
        CHECK(skeins[1].fibre[0].name == "Bluefaced Leicester");
        CHECK(skeins[0].colour == "teal");
        CHECK(skeins[1].colour == "grey");
        REQUIRE(one.skein_colours.size() == 2);
        CHECK(one.skein_colours[0].size() == 1);
        CHECK(kinds_of(skeins) == std::vector<std::size_t>{0, 1});
    }
}

TEST_CASE("a skein that does not say what the others say is as the batch, else as they all are") {
    const auto of_batch = read_toml(
        "fibre = \"Romney\"\n[[skein]]\nlength = \"200m\"\nmass = \"50g\"\n"
        "[[skein]]\nlength = \"200m\"\nmass = \"50g\"\nfibre = \"BFL\"\n");
    CHECK(of_batch.batch.skeins[0].fibre[0].name == "Romney");
    const auto as_others = typed({"200m/50g fibre BFL", "210m/50g", "205m/50g fibre BFL"});
    CHECK(as_others.batch.skeins[1].fibre[0].name == "Bluefaced Leicester");
    CHECK(as_others.batch.fibre.size() == 1);
    CHECK(holds(as_others.notes.at(0), "fibre of skein 2 is taken as the others'"));
    const auto asked = heard([] {
        typed({"200m/50g fibre BFL", "210m/50g", "205m/50g fibre Romney"});
    });
    CHECK(holds(asked, "skein 2: its fibre is not said, and the others differ in it"));
    // The same blend said the other way round is no other fibre.
    const auto blend =
        typed({"200m/50g fibre merino/silk 70/30", "210m/50g", "205m/50g fibre silk/merino 30/70"});
    CHECK(blend.batch.skeins[1].fibre.size() == 2);
    const auto wraps = heard([] {
        typed({"200m/50g wraps 9wpi", "210m/50g wraps 14wpi", "9m/2g"});
    });
    CHECK(holds(wraps, "skein 3: its count of wraps is not said"));
}

TEST_CASE("what is wrong with a skein's own word says where and what would be right") {
    CHECK(holds(heard([] { typed({"200m/50g fibre Corridale"}); }),
                "--skein: fibre: there is no fibre 'Corridale'"));
    CHECK(holds(heard([] { typed({"200m/50g wraps 14g"}); }), "--skein: wraps: cannot read '14g'"));
    CHECK(holds(heard([] { typed({"200m/50g fibre"}); }), "nothing stands after 'fibre'"));
    CHECK(holds(heard([] { typed({"200m/50g fibre Merino 70%"}); }), "sum to 70 %"));
    CHECK(holds(heard([] { read_csv("Skein,m,g,Fibre\nA,200,50,Corridale\n"); }),
                "b.csv:2: Fibre: there is no fibre 'Corridale'"));
    CHECK(holds(heard([] {
                    read_toml(
                        "micron = \"24\"\n[[skein]]\nlength = \"2m\"\nmass = \"1g\"\n"
                        "fibre = \"BFL\"\n");
                }),
                "give micron and staple, or a fibre for each skein"));
    CHECK(holds(
        heard([] { read_toml("[[skein]]\nlength = \"2m\"\nmass = \"1g\"\ntwist = \"5tpi\"\n"); }),
        "twist"));
}

TEST_CASE("bought yarn is of the fibre it is sold by, unless the person says otherwise") {
    const auto fibre_of = [](const char* text, const char* more = "") {
        const auto read = read_toml(std::string("[[skein]]\nlength = \"") + text +
                                    "\"\nmass = \"250g\"\n" + more);
        return read.batch.fibre.empty() ? "" : read.batch.fibre[0].name;
    };
    CHECK(fibre_of("8/2 cotton") == "Cotton (general)");
    CHECK(fibre_of("16/2 mercerised cotton") == "Cotton (general)");
    CHECK(fibre_of("2/20 Nm") == "");
    CHECK(fibre_of("8/2 cotton", "fibre = \"silk\"\n") != "Cotton (general)");
    CHECK(fibre_of("8/2 cotton", "fibre = \"unknown\"\n") == "");
}

// 8/2 cotton: 840 yd/lb x 8 / 2 strands = 3360 yd/lb, 6.774 m/g: 250 g are 1693 m.
TEST_CASE("bought yarn is a skein by its count and its mass") {
    for (const char* text : {"8/2 cotton 250g", "250 g of 8/2 cotton", "8/2 cotton, 250 g"})
        CHECK(in_metres(typed({text}).batch.skeins[0].length) ==
              doctest::Approx(1693).epsilon(1e-3));
    const auto file = read_toml("[[skein]]\nlength = \"8/2 cotton\"\nmass = \"250g\"\n");
    CHECK(in_metres(file.batch.skeins[0].length) == doctest::Approx(1693).epsilon(1e-3));
    CHECK(holds(heard([] { typed({"8/2 wool 250g"}); }), "wool is sold by either of the last two"));
    CHECK(holds(heard([] { typed({"8/2 cotton"}); }), "weighs how much"));
    for (const char* text : {"Nm 6/1 250 g", "250 g of Nm 6/1", "Nm 6/1, 250g"})
        CHECK(in_metres(typed({text}).batch.skeins[0].length) == doctest::Approx(1500));
    CHECK(in_metres(typed({"R 50 tex/2 250g"}).batch.skeins[0].length) == doctest::Approx(5000));
    CHECK(in_metres(typed({"16/2 linen 250g"}).batch.skeins[0].length) ==
          doctest::Approx(1209.6).epsilon(1e-3));
    CHECK(in_metres(typed({"220m/100g"}).batch.skeins[0].length) == doctest::Approx(220));
    // A fraction is no count.
    CHECK(in_grams(typed({"180yd/1 3/4 oz"}).batch.skeins[0].mass) ==
          doctest::Approx(49.6).epsilon(1e-3));
    CHECK(in_grams(typed({"3/4 oz, 80yd"}).batch.skeins[0].mass) ==
          doctest::Approx(21.26).epsilon(1e-3));
    CHECK_FALSE(is_a_count("1/2 yd"));
    CHECK(is_a_count("16/2 linen"));
}

TEST_CASE("a colour that pictures do not know parts skeins all the same, and it is said") {
    const auto read = typed({"200m/50g colour Autumn sunset", "200m/50g colour Winter"});
    CHECK(kinds_of(read.batch.skeins) == std::vector<std::size_t>{0, 1});
    CHECK(holds(read.notes.at(0), "'Autumn sunset' tells skeins apart, and is drawn undyed"));
}

TEST_CASE("a weight of fibre, a price and a staple are still no fibre of the skein") {
    const auto read =
        read_csv("Skein,Fibre weight (g),Fibre price,Yarn (g),Metres\nA,55,3,50,100\n");
    CHECK(read.batch.skeins[0].fibre.empty());
    CHECK(in_grams(read.batch.skeins[0].mass) == doctest::Approx(50));
}
