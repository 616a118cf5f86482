// Classes of ideas: what holds for a way of saying it, whichever thing it is said of.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/catalogue.hpp"
#include "catalog/reference/ground.hpp"
#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/suggestion_text.hpp"
#include "engine/suggestion/groups.hpp"
#include "engine/suggestion/understand.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

using Reader = catalog::IdeaReader;
using Kinds = std::vector<std::string>;

constexpr const char* things_as_said[] = {"a hat", "a scarf", "two cowls", "a woven blanket",
                                          "mittens"};

}  // namespace

TEST_CASE("what is said behind a thing is told in its own words, whichever thing it is") {
    Reader reader;
    for (const std::string tail :
         {"covered in pearls", "edged with ribbon", "sewn together", "dipped in indigo",
          "that folds into a pouch", "which unrolls", "that opens down the side",
          "shaped like a toadstool", "like a strawberry", "twice as long as usual",
          "as wide as my sofa", "big enough to share", "the size of a stamp",
          "long enough to go round twice", "from odd bits"})
        for (const std::string thing : things_as_said) {
            CAPTURE(thing + " " + tail);
            const auto taken = reader.read(thing + " " + tail);
            CHECK(taken.wanted.size() == 1);
            CHECK(taken.left_out == std::vector<std::string>{tail});
        }
}

TEST_CASE("what a thing is for, and why, changes nothing in it") {
    Reader reader;
    for (const std::string reason :
         {"for my sister's birthday", "to wear at the market", "because I am cold",
          "so I can show it off", "that I could wear to work", "that she would love",
          "that goes with my coat", "that keeps me warm", "for the winter", "in the winter",
          "if you have the time", "when you are ready", "please", "that suits everyone",
          "to go with my coat", "that lasts"})
        for (const std::string thing : things_as_said) {
            CAPTURE(thing + " " + reason);
            CHECK(reader.read(thing + " " + reason).left_out.empty());
        }
}

TEST_CASE("a word in haste is the word that is meant") {
    Reader reader;
    const std::pair<std::string, std::string> pairs[] = {
        {"wld it make a scrf?", "would it make a scarf?"},
        {"jmpr n mttns plz", "jumper and mittens please"},
        {"shes 6, a hat", "she's 6, a hat"},
        {"is it strong enuf to be warp", "is it strong enough to be warp"},
        {"blnkt 4 my dad", "blanket for my dad"},
        {"dont make socks, a scrf", "don't make socks, a scarf"},
        {"feather n fan shawl", "feather and fan shawl"},
        {"hat & mitts", "hat and mitts"},
    };
    for (const auto& [hasty, whole] : pairs) {
        CAPTURE(hasty);
        const auto a = reader.read(hasty), b = reader.read(whole);
        CHECK(reader.kinds(hasty) == reader.kinds(whole));
        CHECK(a.topics == b.topics);
        CHECK(a.fabric == b.fabric);
        CHECK(a.ruled_out == b.ruled_out);
        CHECK(a.wearer == b.wearer);
        CHECK(a.left_out == b.left_out);
    }
}

TEST_CASE("a word without its vowels is meant by one trade word alone, and never a known word") {
    Reader reader;
    Stemmer stemmer;
    const std::pair<const char*, const char*> slips[] = {
        {"blnkt", "blanket"}, {"scrf", "scarf"}, {"swetr", "sweater"}, {"cshn", "cushion"}};
    for (const auto& [slip, meant] : slips) {
        CHECK_FALSE(reader.lexicon().knows(slip, stemmer));
        CHECK(reader.lexicon().meant_by_slip(slip) == meant);
    }
    for (const char* none : {"ht", "xqzt", "brrr", "hmmm", "zzz"})
        CHECK(reader.lexicon().meant_by_slip(none) == "");
    CHECK(reader.lexicon().spelt("would") == nullptr);
    REQUIRE(reader.lexicon().spelt("wld") != nullptr);
    CHECK(*reader.lexicon().spelt("wld") == "would");
}

TEST_CASE("what is ruled out from before or behind is not wanted, and what else is said is") {
    Reader reader;
    for (const std::string no :
         {"leave socks out of it", "count socks out", "socks are out", "I would warn you off socks",
          "keep away from socks", "spare us socks", "socks are not for me",
          "I'd advise against socks", "leave socks alone"}) {
        CAPTURE(no);
        CHECK(reader.kinds(no + ". A hat, please") == Kinds{"hat"});
        CHECK(reader.read(no + ". A hat").ruled_out == Kinds{"socks"});
    }
}

TEST_CASE("what somebody else would say is not what the writer wants") {
    Reader reader;
    for (const std::string say :
         {"gran would say a shawl", "my mum says a shawl", "everyone says a shawl",
          "they all said a shawl", "people suggest a shawl"})
        for (const std::string own : {"I say a hat", "I'd like a hat", "I vote for a hat"}) {
            CAPTURE(say + ", " + own);
            CHECK(reader.kinds(say + ", " + own) == Kinds{"hat"});
        }
    CHECK(reader.kinds("my mum says a shawl") == Kinds{"shawl"});
    CHECK(reader.kinds("she wants a shawl and I want a hat") == Kinds{"shawl", "hat"});
}

TEST_CASE("a measure of what the thing has is none of its size") {
    Reader reader;
    for (const std::string idea :
         {"a scarf with a 10 cm fringe", "hat with a 3 inch brim", "a stole with tufts every 5 cm"})
        CHECK(reader.read(idea).wanted.front().sizes.empty());
    CHECK(reader.read("a scarf with fringe, 150 cm").wanted.front().sizes.size() == 1);
}

TEST_CASE("ideas that are answered in other words are not listed as one") {
    const auto catalogue = catalog::built_in();
    const auto measured =
        interpret(catalog::read_batch_file(ROOT_DIR "/tests/cases/curlew.toml"), catalogue);
    const auto yarn = profile(measured.batch, catalogue.yarn);
    Answerer answerer{catalog::ground(catalogue, yarn, measured.owned)};
    const char* ideas[] = {"a hat",
                           "a tiny hat",
                           "a hat for the kettle",
                           "a cotton hat",
                           "a hat, size L",
                           "a hat, half of it",
                           "a hat with a zip",
                           "a hat from one skein",
                           "a hat in under 20 m",
                           "a hat, 2 colours"};
    SuggestionGroups groups;
    std::size_t row = 0;
    for (const auto* idea : ideas) {
        Suggestion s;
        s.idea = idea;
        const auto answer = answerer.answer(s);
        groups.add(++row, s, answer);
    }
    CHECK(groups.ranked().size() == std::size(ideas));
}

TEST_CASE("an edge that a thing has is no border in this yarn") {
    Reader reader;
    for (const std::string edge :
         {"with a lace edge", "with a garter border", "with lace edging", "with a trim"}) {
        CAPTURE(edge);
        const auto taken = reader.read("a shawl " + edge);
        CHECK(taken.role == YarnRole::unsaid);
        CHECK(!taken.left_out.empty());
    }
    for (const std::string use : {"just the border of", "as a border on", "lace edging for"}) {
        CAPTURE(use);
        CHECK(reader.read(use + " a shawl").role == YarnRole::border);
    }
}

TEST_CASE("a thing like somebody's is wanted, one that somebody had is not") {
    Reader reader;
    for (const std::string thing : {"scarf", "hat", "shawl"}) {
        CAPTURE(thing);
        for (const std::string likeness : {" like my grandmother wore", " like the one my dad had",
                                           " as my grandpa wore at sea"})
            CHECK(reader.read("a " + thing + likeness).wanted.size() == 1);
        CHECK(reader.read("my grandmother wore a " + thing).wanted.empty());
    }
}

TEST_CASE("a number that is somebody's age counts nothing") {
    Reader reader;
    for (const std::string idea :
         {"child 6-8 hat", "hat, kids 4 to 6", "I am 7 and I want a hat", "age 6-8 hat"}) {
        CAPTURE(idea);
        const auto taken = reader.read(idea);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().count == 1);
        CHECK(taken.wearer == Wearer::child);
        CHECK(taken.years.has_value());
        CHECK(taken.left_out.empty());
    }
}
