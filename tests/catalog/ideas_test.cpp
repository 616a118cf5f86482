// What must hold of whole classes of ideas, whatever the words of a single one.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <set>
#include <sstream>

#include "catalog/reference/catalogue.hpp"
#include "engine/suggestion/understand.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

using Reader = catalog::IdeaReader;

// The words that stand in the table as nothing but a way of making.
std::vector<std::string> ways_of_making() {
    std::set<std::string> ways, others;
    std::istringstream table{std::string(catalog::carried().words.text())};
    for (std::string line; std::getline(table, line);) {
        const auto first = line.find('\t');
        const auto word = line.substr(0, first);
        (line.ends_with("\teveryday\tmake") ? ways : others).insert(word);
    }
    std::vector<std::string> out;
    for (const auto& way : ways)
        if (!others.count(way)) out.push_back(way);
    return out;
}

bool names(const Taken& taken, const std::string& word) {
    const auto in = [&](const std::string& said) { return said.find(word) != std::string::npos; };
    return std::any_of(taken.left_out.begin(), taken.left_out.end(), in) ||
           std::any_of(taken.not_known.begin(), taken.not_known.end(),
                       [&](const Unmade& u) { return in(u.said); });
}

std::vector<std::string> kinds_of(const Taken& taken) {
    std::vector<std::string> out;
    for (const auto& wanted : taken.wanted) out.push_back(wanted.kind);
    return out;
}

}  // namespace

TEST_CASE("how a piece is made is named wherever the word stands, and the piece is still read") {
    Reader reader;
    const auto ways = ways_of_making();
    REQUIRE(ways.size() >= 100);
    for (const auto& way : ways)
        for (const auto& idea :
             {way + " mittens", "mittens, " + way, "I would like mittens, " + way + " please"}) {
            INFO(idea);
            const auto taken = reader.read(idea);
            REQUIRE(kinds_of(taken) == std::vector<std::string>{"mittens"});
            // Two of them may be one name in the list: "picot edge" holds "picot".
            const bool is_a_form = !taken.wanted[0].form.empty();
            CHECK((is_a_form || names(taken, way.substr(0, way.find(' ')))));
        }
}

TEST_CASE("a most is of this yarn, a least is told, and neither is what the piece takes") {
    Reader reader;
    for (const auto* most : {"no more than", "at most", "under", "less than", "up to", "max"})
        for (const auto* amount : {"150 g", "3 oz", "200 m", "300 yards"}) {
            const auto idea = fmt::format("{} {} in a cowl", most, amount);
            INFO(idea);
            const auto taken = reader.read(idea);
            CHECK((taken.at_hand || taken.at_hand_mass));
            REQUIRE(taken.wanted.size() == 1);
            CHECK_FALSE((taken.wanted[0].needs || taken.wanted[0].needs_mass));
        }
    for (const auto* least : {"at least", "no less than", "a minimum of"}) {
        const auto taken = reader.read(fmt::format("a cowl using {} 150 g", least));
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.left_out == std::vector<std::string>{"at least 150 g"});
        CHECK_FALSE((taken.at_hand_mass || taken.wanted[0].needs_mass));
    }
    CHECK(reader.read("a cowl takes 150 g").wanted[0].needs_mass);
}

TEST_CASE("a measure right before a thing is that thing's, whatever else is wanted") {
    Reader reader;
    const auto taken = reader.read("a hat and a 2.5 m scarf using 300 m");
    REQUIRE(taken.wanted.size() == 2);
    CHECK(taken.wanted[0].sizes.empty());
    REQUIRE(taken.wanted[1].sizes.size() == 1);
    CHECK(in_centimetres(taken.wanted[1].sizes[0]) == doctest::Approx(250));
}

TEST_CASE("halves after a number are added to it") {
    Reader reader;
    for (const auto& [idea, cm] : {std::pair{"a hat, 22 and a half inches", 57.15},
                                   std::pair{"a scarf one and a half metres long", 150.0},
                                   std::pair{"a scarf 6 and a quarter feet long", 190.5}}) {
        INFO(idea);
        const auto taken = reader.read(idea);
        REQUIRE(taken.wanted.size() == 1);
        REQUIRE(taken.wanted[0].sizes.size() == 1);
        CHECK(in_centimetres(taken.wanted[0].sizes[0]) == doctest::Approx(cm));
    }
    // Another thing is no half.
    CHECK(reader.read("2 hats and half a blanket").wanted.size() == 2);
}

TEST_CASE("of several things for several people each is for its own") {
    Reader reader;
    using enum Wearer;
    const auto wearers = [&](const std::string& idea) {
        std::vector<Wearer> out;
        for (const auto& wanted : reader.read(idea).wanted) out.push_back(wanted.wearer);
        return out;
    };
    using List = std::vector<Wearer>;
    CHECK(wearers("a hat for grandpa and mittens for the baby") == List{adult, baby});
    CHECK(wearers("a scarf or a baby hat") == List{adult, baby});
    CHECK(wearers("a throw or a baby blanket") == List{home, baby});
    CHECK(wearers("hat and mitts for my mum, scarf for the baby") == List{adult, adult, baby});
    CHECK(wearers("a hat and mitt set, hat for me and mitts for my daughter") ==
          List{unsaid, unsaid});  // as a grown-up's: of what age she is nobody says
    // For one and the same there is nothing to tell apart.
    CHECK(wearers("hat and mitts for my mum") == List{unsaid, unsaid});
    CHECK(wearers("baby hat and mittens") == List{unsaid, unsaid});
}

TEST_CASE("what another thing has, is like, or is somebody's own is not wanted too") {
    Reader reader;
    const std::vector<std::string> gloves{"gloves"}, shawl{"shawl"}, vest{"vest"};
    CHECK(kinds_of(reader.read("gloves with long cuffs")) == gloves);
    CHECK(kinds_of(reader.read("gloves to match my scarf")) == gloves);
    CHECK(kinds_of(reader.read("a shawl worn like a scarf")) == shawl);
    CHECK(kinds_of(reader.read("a vest, v neck")) == vest);
    CHECK(kinds_of(reader.read("gloves and cuffs")).size() == 2);
    CHECK(kinds_of(reader.read("gloves and my favourite scarf")).size() == 2);
    CHECK(names(reader.read("a shawl worn like a scarf"), "scarf"));
}

TEST_CASE("a word of two meanings beside an amount is a weight, and no stitch pattern") {
    Reader reader;
    const auto of_weight = reader.read("200g of aran for a hat");
    CHECK(of_weight.weight == "medium");
    CHECK_FALSE(of_weight.fabric.named());
    CHECK(of_weight.left_out.empty());
    CHECK(reader.read("an aran jumper").fabric.knitted == "cables");
}

TEST_CASE("numbers that are sides, ages and sizes of clothes count nothing") {
    Reader reader;
    CHECK(reader.read("three 12 by 12 pot holders").wanted[0].count == 3);
    CHECK(reader.read("a shawl for my nana who's 91").left_out.empty());
    const auto aged = reader.read("a hat for a 3 yo");
    CHECK(aged.wearer == Wearer::child);
    CHECK(aged.years == 3);
    CHECK_FALSE(reader.read("pullover, size 8 US").needle);
    CHECK(reader.read("scarf on size 8 needles").needle);
}

TEST_CASE("the stitch of an edge, the size of whom it is for, are not the piece's own") {
    Reader reader;
    for (const auto* edge : {"brim", "edge", "border", "cuff", "collar"}) {
        const auto taken = reader.read(fmt::format("a hat with a garter {}", edge));
        INFO(edge);
        CHECK_FALSE(taken.fabric.named());
        CHECK(names(taken, "garter"));
        CHECK(reader.read(fmt::format("a garter hat with a {}", edge)).fabric.knitted == "garter");
    }
    const auto teddy = reader.read("a sweater with a hood for a teddy bear 12 inches tall");
    REQUIRE(teddy.wanted.size() == 1);
    CHECK(teddy.worn_by == "teddy bear");
    CHECK(teddy.wanted[0].sizes.empty());
    CHECK(names(teddy, "12 inches"));
    CHECK(kinds_of(reader.read("a scarf with a cable and a polo neck")).size() == 1);
}

TEST_CASE("to the end of the yarn is all of it") {
    Reader reader;
    for (const auto* all : {"as long as it will go", "as long as possible", "till it's all gone",
                            "until the yarn runs out", "use it all up"})
        CHECK(reader.read(fmt::format("a scarf, {}", all)).role == YarnRole::all);
}
