// Spreadsheets of skeins as people keep them: read rightly, asked or refused, nothing in silence.
#include <doctest/doctest.h>

#include "catalog/text/bad_text.hpp"
#include "catalog/text/encoding.hpp"
#include "catalog/typed/batch_text.hpp"
#include "tests/catalog/carried.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

struct Sheet {
    std::vector<Skein> skeins;
    std::vector<std::string> notes;
};

Sheet sheet_of(const std::string& text) {
    const auto read = interpret(read_batch_csv(text, "s.csv"), carried());
    return {read.batch.skeins, read.notes};
}

std::string complaint_about_sheet(const std::string& text) {
    try {
        sheet_of(text);
    } catch (const std::exception& error) {
        return error.what();
    }
    return "";
}

// Three skeins of 100, 120 and 80 m that weigh 50, 60 and 40 g.
void check_three(const std::string& text) {
    INFO(text);
    Sheet sheet;
    REQUIRE_NOTHROW(sheet = sheet_of(text));
    REQUIRE(sheet.skeins.size() == 3);
    const double lengths[] = {100, 120, 80}, masses[] = {50, 60, 40};
    for (std::size_t s = 0; s < 3; ++s) {
        CHECK(in_metres(sheet.skeins[s].length) == near(lengths[s], 0.01));
        CHECK(in_grams(sheet.skeins[s].mass) == near(masses[s], 0.01));
    }
}

std::string utf16(const std::string& text, bool big, bool mark) {
    std::string out;
    if (mark) out = big ? "\xFE\xFF" : "\xFF\xFE";
    for (const char c : text) {
        if (big) out += '\0';
        out += c;
        if (!big) out += '\0';
    }
    return out;
}

const std::string rows = "A,100,50\nB,120,60\nC,80,40\n";

}  // namespace

TEST_CASE("promise: spreadsheets as people keep them are read alike") {
    for (const std::string& text : {
             "Skein,Length (m),Weight (g)\n" + rows,
             "sep=,\nSkein,Length (m),Weight (g)\n" + rows,
             std::string("sep=;\nSkein;Length (m);Weight (g)\nA;100;50\nB;120;60\nC;80;40\n"),
             "My blue batch\n\nSkein,Length (m),Weight (g)\n" + rows,
             "My blue batch,,\nspun in May,,\nSkein,Length (m),Weight (g)\n" + rows,
             "Skein,Length (m),Weight (g)\n" + rows + "Total,300,150\n",
             "Skein,Length (m),Weight (g)\n" + rows + "Sum:,300,150\n",
             "Skein,Length (m),Weight (g)\n" + rows + "All,300,150\n",
             "Skein,Length (m),Weight (g)\n" + rows + "Grand Total,300,150\n",
             "Skein,Length (m),Weight (g)\n" + rows + "Average,100,50\n",
             "Skein,Length (m),Weight (g)\n" + rows + ",300,150\n",
             "Skein,Length (m),Weight (g)\n" + rows + "\n,,\nTotal,300,150\n",
             "Skein,Length (m),Weight (g)\n" + rows + "spun on my wheel,,\n",
             std::string("Skein,Length (m),Weight (g),,,\nA,100,50,,,\nB,120,60,,,,,\nC,80,40\n"),
             std::string("A,100m,50g\nB,120m,60g\nC,80m,40g\n"),
             std::string("50g,100m\n60g,120m\n40g,80m\n"),
             std::string("A\t100 m\t50 g\nB\t120 m\t60 g\nC\t80 m\t40 g\n"),
             std::string("Skein|Metres|Grams\nA|100|50\nB|120|60\nC|80|40\n"),
             std::string("Skein,Metres,Grams\r\nA,100,50\r\nB,120,60\r\nC,80,40\r\n"),
             std::string("Skein,Metres,Grams\rA,100,50\rB,120,60\rC,80,40\r"),
             std::string("Skein;Metres;Grams\nA;100,0;50,0\nB;120,0;60,0\nC;80,0;40,0\n"),
             std::string("Skein,Grist (m/100g),Length (m),Mass (g)\nA,200,100,50\nB,200,120,60\n"
                         "C,200,80,40\n"),
             std::string("Skein,m/100g,Metres,Grams\nA,200,100,50\nB,200,120,60\nC,200,80,40\n"),
             std::string("Skein,Metres per 100g,Length (m),Mass (g)\nA,200,100,50\nB,200,120,60\n"
                         "C,200,80,40\n"),
             std::string("Skein,Twist (turns/m),Length (m),Mass (g)\nA,200,100,50\nB,200,120,60\n"
                         "C,200,80,40\n"),
             std::string("Skein,Price per oz,Length (m),Mass (g)\nA,2,100,50\nB,2,120,60\n"
                         "C,2,80,40\n"),
             std::string("Skein,Length before washing (m),Length after washing (m),g\n"
                         "A,110,100,50\nB,130,120,60\nC,90,80,40\n"),
             std::string("Skein,Fibre weight (g),Yarn weight (g),Metres\nA,55,50,100\n"
                         "B,66,60,120\nC,44,40,80\n"),
             std::string("Skein,Fleece weight (g),Weight (g),Metres\nA,55,50,100\nB,66,60,120\n"
                         "C,44,40,80\n"),
             std::string(
                 "Skein,Metres,Yards,Grams,Ounces\nA,100,109.4,50,1.76\nB,120,131.2,60,2.1\n"
                 "C,80,87.5,40,1.4\n"),
             std::string("SKEIN,LENGTH IN METRES,WEIGHT IN GRAMS\nA,100,50\nB,120,60\nC,80,40\n"),
             std::string("name,length,mass\nA,100 m,50 g\nB,0.12 km,0.06kg\nC,8000 cm,40 gm\n"),
             std::string("name,length (ft),mass (lb)\nA,328.084,0.110231\nB,393.701,0.132277\n"
                         "C,262.467,0.0881849\n"),
             std::string("name,length,mass\n\"A, the first\",\"100m\",\"50g\"\nB,120m,60g\n"
                         "\"C\nwith a note\",80m,40g\n"),
             std::string("name,length,mass\nA,100\xC2\xA0m,50\xC2\xA0g\nB,120m,60g\nC,80m,40g\n"),
             utf16("Skein,Metres,Grams\r\n" + rows, false, true),
             utf16("Skein,Metres,Grams\r\n" + rows, true, true),
             utf16("Skein,Metres,Grams\n" + rows, false, false),
             utf16("Skein\tMetres\tGrams\nA\t100\t50\nB\t120\t60\nC\t80\t40\n", false, true),
         })
        check_three(text);
}

TEST_CASE("what is left out of a sheet is said, once") {
    const auto sheet =
        sheet_of("Skein,Dye lot,Metres,Grams\nA,x,100,50\nB,x,120,60\nTotal,,220,110\n");
    REQUIRE(sheet.notes.size() == 2);
    CHECK(sheet.notes[0] == "s.csv: column 'Dye lot' is not used");
    CHECK(sheet.notes[1] == "s.csv:4: 'Total' is no skein and is left out");
    const auto grist = sheet_of("Skein,Grist (yd/lb),Length (yd),Mass (oz)\nA,1000,210,3.2\n");
    REQUIRE(grist.notes.size() == 1);
    CHECK(grist.notes[0] == "s.csv: column 'Grist (yd/lb)' is not used: it is a grist");
    const auto sum = sheet_of("Skein,Metres,Grams\nA,100,50\nB,120,60\n,220,110\n");
    CHECK(sum.skeins.size() == 2);
    CHECK(sum.notes.size() == 1);
}

TEST_CASE("a sheet that may mean two things is asked about") {
    CHECK(
        complaint_about_sheet("Skein,Length 1 (m),Length 2 (m),g\nA,100,110,50\n") ==
        "s.csv:1: columns 'Length 1 (m)' and 'Length 2 (m)' both hold a length: which? Rename the "
        "other");
    CHECK(complaint_about_sheet("Skein,Length before washing (m),g\nA,100,50\n").find("which?") !=
          std::string::npos);
    CHECK(
        complaint_about_sheet("Skein,m/100g,Mass (g)\nA,200,50\n") ==
        "s.csv:1: the header needs a column of lengths, such as 'Length (yd)' or 'grams'; 'm/100g' "
        "is none: it is a grist");
    CHECK(complaint_about_sheet("Skein,Metres per 100g,Grams\nA,200,50\n").find("it is a") !=
          std::string::npos);
}

TEST_CASE("places are an editor's lines, a quote that is never closed is found where it opens") {
    CHECK(complaint_about_sheet("Skein,Metres,Grams\n\n\nA,100,50\n\"B\nb\",120,60\nC,x,40\n")
              .find("s.csv:7: Metres: ") == 0);
    CHECK(complaint_about_sheet("Skein,Metres,Grams\nA,100,50\n\"B,120,60\nC,80,40\n") ==
          "s.csv:3: a quote opened in the record that begins here is never closed");
    CHECK(complaint_about_sheet("Skein,Metres,Grams\nA,100,50,60\n") ==
          "s.csv:2: 4 fields, but the header names 3");
}

TEST_CASE("UTF-16 that is cut short or broken is text, not a fault") {
    for (const std::string& text :
         {std::string("\xFF\xFE"), std::string("\xFF\xFE\x00", 3),
          std::string("\xFE\xFF\xD8\x00", 4), std::string("\xFE\xFF\xD8\x00\x00\x41", 6)})
        CHECK_NOTHROW(in_utf8(text));
    CHECK(in_utf8(std::string("\xFE\xFF\xD8\x3E\xDD\x76", 6)) == "\xF0\x9F\xA5\xB6");
    CHECK(in_utf8("\xEF\xBB\xBF"
                  "a,b") == "a,b");
}

TEST_CASE("sheets: a ditto is the cell above it, also across a blank row") {
    const auto read = read_batch_csv(
        "skein,yd,oz,fibre\n1,212,3.75,Romney\n2,198,3.5,ditto\n\n3,205,3.6,\"\"\"\"\n4,200,3.5,-"
        "\"-\n",
        "s.csv");
    REQUIRE(read.skeins.size() == 4);
    for (const auto& skein : read.skeins) CHECK(skein.own.at("fibre")[0].text == "Romney");
}

TEST_CASE(
    "sheets: a count of skeins multiplies what is of each, and is asked where it is not said") {
    // 'Number of skeins' was taken for a name, and three skeins counted as one.
    const auto read = read_batch_csv(
        "Yarn name,Qty,yds per skein,grams ea\nwhite,3,150,68\ngrey,1,151,70\nTotal 4 "
        "sk,4,601,274\n",
        "s.csv");
    REQUIRE(read.skeins.size() == 4);
    CHECK(read.skeins[2].name.text == "white 3");
    CHECK(read.skeins[3].name.text == "grey");
    for (const char* head : {"Qty", "# skeins", "Number of skeins", "No. of hanks"}) {
        CAPTURE(head);
        const auto sheet = std::string("name,") + head + ",yd,g\nwhite,3,150,68\n";
        CHECK_THROWS_WITH_AS(read_batch_csv(sheet, "s.csv"), doctest::Contains("which?"), Refused);
    }
    CHECK(read_batch_csv("Skein no.,yd,g\n3,150,68\n", "s.csv").skeins.size() == 1);
}

TEST_CASE("sheets: a skein whole in one cell, and headings in other tongues") {
    const auto whole =
        interpret(read_batch_csv("name,length,weight\na,210yd/4oz,\n", "s"), carried());
    CHECK(in_grams(whole.batch.skeins[0].mass) == doctest::Approx(113.398).epsilon(1e-5));
    const auto german =
        read_batch_csv("Strang;Länge in m;Gewicht in g\nA;187,5;98,4\nSumme;187,5;98,4\n", "s");
    REQUIRE(german.skeins.size() == 1);
    CHECK(german.skeins[0].length.text == "187,5 m");
    // 'What's in it' was a length in inches.
    const auto inside = read_batch_csv("name,m,g,What's in it\nA,171,38.5,merino\n", "s");
    CHECK(inside.notes.empty());
    CHECK(inside.skeins[0].own.at("fibre")[0].text == "merino");
}

TEST_CASE("sheets: preparation, draw and plies are the batch's, and asked where rows differ") {
    const auto texts = read_batch_csv(
        "no,m,g,Carded/combed?,How spun,Ply\n1,200,100,hand carded rolags,long draw,2\n"
        "2,190,95,ditto,long draw,2-ply\n3,180,90,rolags,?,two\n",
        "s.csv");
    const auto read = interpret(texts, carried()).batch;
    CHECK(read.preparation == Preparation::carded);
    CHECK(read.draw == Draw::long_draw);
    CHECK(read.plies == 2);
    REQUIRE(texts.notes.size() == 1);
    CHECK(texts.notes[0] ==
          "s.csv: How spun: 1 of 3 rows do not say it and are taken as the others");
    auto differ = read_batch_csv("no,m,g,Ply,Prep\n1,200,100,2,top\n2,190,95,3,top\n", "s.csv");
    CHECK_THROWS_WITH_AS(interpret(differ, carried()),
                         doctest::Contains("s.csv:3: Ply: '3', but s.csv:2: Ply: '2': which?"),
                         Refused);
    differ.fields["plies"] = {{"3", "--ply"}};  // said over it
    CHECK(interpret(differ, carried()).batch.plies == 3);
}
