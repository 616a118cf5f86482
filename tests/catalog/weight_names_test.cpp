// The trade's names for the weight classes: one table, read in a cell and in the words of an idea.
#include "catalog/reference/weight_names.hpp"

#include <doctest/doctest.h>

#include "catalog/reference/tables.hpp"
#include "catalog/text/bad_text.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "engine/suggestion/understand.hpp"
#include "engine/units/failure.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

constexpr const char* header = "name,means,in_ideas,mark,source,question\n";

struct Read {
    SpokenWords spoken;
    std::string words;

    explicit Read(const std::string& rows) {
        read_weight_names(header + rows, "weight_names.csv", carried().yarn.classes, spoken, words);
    }
};

std::string class_in_cell(const std::string& text) {
    const auto read = read_suggestion({{"idea", "hat"}, {"weight", text}}, carried());
    for (const auto& c : carried().yarn.classes)
        if (c.number == read.weight_class) return c.name;
    return "";
}

}  // namespace

TEST_CASE("weight names: a name is looked up, asked, or kept out of ideas") {
    const Read read(
        "dk,light,yes,common practice,no source,\n"
        "sock,super fine,no,common practice,no source,\n"
        "8 ply,light,yes,from memory,labels,a weight or a count of plies\n");
    CHECK(read.spoken.find("weight", "DK")->means == "light");
    CHECK(read.spoken.find("weight", "sock")->means == "super fine");
    CHECK(read.spoken.find("weight", "8-ply")->means.empty());
    CHECK(read.words == "dk\tweight\tlight\n8 ply\tweight\tlight\n");
}

TEST_CASE("weight names: a bad row stops the build with its line") {
    for (const char* row :
         {"dk,lite,yes,common practice,no source,\n",
          "dk,light,perhaps,common practice,no source,\n", "dk,light,yes,hearsay,no source,\n",
          "dk,light,yes,common practice,no source,\ndk,fine,yes,judgement,,\n"}) {
        CAPTURE(row);
        CHECK_THROWS_WITH_AS(Read{row}, doctest::Contains("weight_names.csv:"), BadText);
    }
}

TEST_CASE("weight names: an idea and a cell read the same name alike") {
    // They stood in two tables, in code and in words.csv, and drifted apart.
    const Lexicon lexicon(carried().words.text(), carried().kinds);
    Stemmer stemmer;
    int both = 0;
    for (const auto& name : carried().spoken.words("weight")) {
        const auto said = carried().spoken.find("weight", name);
        if (said->means.empty()) continue;
        CAPTURE(name);
        CHECK(class_in_cell(name) == said->means);
        const auto taken = understand("a hat in " + name, lexicon, stemmer);
        if (taken.weight.empty()) continue;
        CHECK(taken.weight == said->means);
        ++both;
    }
    CHECK(both >= 30);
}

TEST_CASE("weight names: a number of plies that is a weight only on some labels is asked") {
    for (const char* text : {"8 ply", "8-ply", "8ply", "4 ply", "10 ply", "5ply", "12 ply"}) {
        CAPTURE(text);
        CHECK_THROWS_WITH_AS(class_in_cell(text), doctest::Contains("which?"), Refused);
    }
}
