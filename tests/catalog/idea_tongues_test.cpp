// Words of other tongues that people type among English ones, and pictures that say yes or no.
#include <doctest/doctest.h>

#include "engine/suggestion/understand.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

using Reader = catalog::IdeaReader;

// The kind of the one thing that is wanted, or the nearest where none makes it.
std::string kind_read(Reader& reader, const std::string& idea) {
    const auto taken = reader.read(idea);
    if (taken.wanted.size() != 1) return "";
    const auto& wanted = taken.wanted.front();
    return wanted.nearest.empty() ? wanted.kind : wanted.nearest;
}

}  // namespace

TEST_CASE("a thing may be named in a neighbour's tongue, with its accents or without") {
    Reader reader;
    const std::pair<std::string, std::string> words[] = {
        {"Mütze", "hat"},           {"mössa", "hat"},
        {"gorro", "hat"},           {"muts", "hat"},
        {"berretto", "hat"},        {"Schal", "scarf"},
        {"écharpe", "scarf"},       {"bufanda", "scarf"},
        {"sjaal", "scarf"},         {"loopschal", "cowl"},
        {"guantes", "mittens"},     {"Handschuhe", "mittens"},
        {"Fäustlinge", "mittens"},  {"lapaset", "mittens"},
        {"Pulswärmer", "cuffs"},    {"Beinstulpen", "cuffs"},
        {"Socken", "socks"},        {"chaussettes", "socks"},
        {"raggsockor", "socks"},    {"villasukat", "socks"},
        {"Hausschuhe", "socks"},    {"genser", "pullover"},
        {"maglione", "pullover"},   {"Strickjacke", "pullover"},
        {"Pullunder", "vest"},      {"Wolldecke", "blanket"},
        {"couverture", "blanket"},  {"Dreieckstuch", "shawl"},
        {"omslagdoek", "shawl"},    {"Kissen", "cushion"},
        {"coussin", "cushion"},     {"Teppich", "rug"},
        {"Tischläufer", "runner"},  {"Geschirrtuch", "towel"},
        {"torchon", "towel"},       {"grytlapp", "pot holder"},
        {"Untersetzer", "mug mat"}, {"Wandbehang", "panel"},
        {"Stirnband", "headband"},  {"Kopftuch", "scarf"},
        {"Teewärmer", "tea cosy"},
    };
    for (const auto& [word, kind] : words) {
        CAPTURE(word);
        CHECK(kind_read(reader, "a " + word + " for me") == kind);
        CHECK(kind_read(reader, word) == kind);
    }
}

TEST_CASE("a baby's thing is a baby's in every tongue") {
    Reader reader;
    for (const std::string word : {"Babydecke", "babyfilt", "Babysocken", "Babymütze"}) {
        CAPTURE(word);
        CHECK(reader.read("a " + word).wearer == Wearer::baby);
    }
}

TEST_CASE("a picture says no to what stands before it, or behind it where it leads") {
    Reader reader;
    CHECK(kind_read(reader, "socks ❌ mittens ✅") == "mittens");
    CHECK(kind_read(reader, "❌ socks ✅ mittens") == "mittens");
    CHECK(kind_read(reader, "scarf 👎 hat 👍") == "hat");
    CHECK(kind_read(reader, "hat ✅") == "hat");
    CHECK(reader.read("👎").not_an_idea);
}

TEST_CASE("what somebody wears or their cat lies on is told, unless a wish follows") {
    Reader reader;
    for (const std::string talk :
         {"my cat sits on my blanket and on the keyboard", "I wear two pullovers today",
          "my husband still wears the hat from our wedding", "my dog sleeps on my best shawl",
          "mod here: the scarf poll is closed, next poll after the break"}) {
        CAPTURE(talk);
        CHECK(reader.read(talk).not_an_idea);
    }
    CHECK(kind_read(reader, "I wear hats. A hat") == "hat");
    CHECK(kind_read(reader, "a hat for my uncle who wears glasses") == "hat");
    CHECK(kind_read(reader, "he wears boots all day so socks") == "socks");
    CHECK(kind_read(reader, "something I can wear: a hat") == "hat");
    CHECK(kind_read(reader, "I would wear it as a hat") == "hat");
}
