// Classes of ideas that name no thing, or name it and mean another.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/catalogue.hpp"
#include "catalog/reference/ground.hpp"
#include "catalog/typed/batch_text.hpp"
#include "engine/suggestion/answer.hpp"
#include "engine/suggestion/understand.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

using Reader = catalog::IdeaReader;

class Curlew {
  public:
    SuggestionAnswer answer(const std::string& idea) {
        Suggestion s;
        s.idea = idea;
        return answerer_.answer(s);
    }
    const catalog::Catalogue& catalogue() const { return catalogue_; }

  private:
    catalog::Catalogue catalogue_ = catalog::built_in();
    catalog::MeasuredBatch measured_ =
        interpret(catalog::read_batch_file(ROOT_DIR "/tests/cases/curlew.toml"), catalogue_);
    YarnProfile yarn_ = profile(measured_.batch, catalogue_.yarn);
    Answerer answerer_{catalog::ground(catalogue_, yarn_, measured_.owned)};
};

using Kinds = std::vector<std::string>;

}  // namespace

TEST_CASE("a thing without a name is what goes where it is said to go") {
    Reader reader;
    const std::pair<std::string, Kinds> rows[] = {
        {"a thing you put round the neck", {"scarf", "cowl"}},
        {"something to lay over my shoulders", {"shawl"}},
        {"the thing that goes on the teapot", {"tea cosy"}},
        {"something for my feet", {"socks"}},
        {"anything to keep the ears warm", {"headband"}},
        {"something for cold wrists, please", {"cuffs"}},
        {"a thing to hang on the wall", {"panel"}},
        {"some thing to put on the floor", {"rug"}},
    };
    for (const auto& [idea, kinds] : rows) {
        CAPTURE(idea);
        CHECK(reader.kinds(idea) == kinds);
        CHECK_FALSE(reader.read(idea).not_an_idea);
    }
    CHECK(reader.read("a thing you put round the neck").alternatives);
    CHECK(reader.kinds("something for the neck, a cowl") == Kinds{"cowl"});
    CHECK(reader.kinds("the thing is, my back hurts").empty());
}

TEST_CASE("every place of the table is of a kind that some template makes") {
    Curlew asked;
    const auto text = asked.catalogue().words.text();
    std::size_t rows = 0;
    for (std::size_t from = 0; from < text.size();) {
        const auto end = std::min(text.find('\n', from), text.size());
        const std::string line(text.substr(from, end - from));
        from = end + 1;
        const auto sign = line.find("\tplace\t");
        if (sign == std::string::npos) continue;
        const auto answer = asked.answer("a thing that goes on the " + line.substr(0, sign));
        CAPTURE(line);
        CHECK(answer.answered);
        ++rows;
    }
    CHECK(rows >= 20);
}

TEST_CASE("a thing that lacks what makes it one is another thing") {
    Reader reader;
    const std::pair<std::string, std::string> rows[] = {
        {"gloves with the fingers cut off", "mitts"},
        {"gloves without fingers", "mitts"},
        {"gloves but no fingers", "mitts"},
        {"a jumper without sleeves", "vest"},
        {"a sleeveless pullover", "vest"},
        {"a pullover with no arms", "vest"},
        {"a scarf without ends", "cowl"},
        {"a scarf joined in a ring", "cowl"},
        {"socks without feet", "leg warmers"},
        {"a hat without a crown", "headband"},
    };
    for (const auto& [idea, kind] : rows) {
        CAPTURE(idea);
        CHECK(reader.kinds(idea) == Kinds{kind});
        CHECK(reader.read(idea).left_out.empty());
    }
    // Of another thing it is told.
    CHECK(reader.kinds("mittens without fingers") == Kinds{"mittens"});
}

TEST_CASE("what was said first is taken back") {
    Reader reader;
    for (const std::string idea :
         {"a hat - no, wait, a cowl", "a hat, no, a cowl", "a hat, no wait, a cowl",
          "a hat, or rather a cowl", "a hat, sorry I meant a cowl", "a hat, no sorry, a cowl"}) {
        CAPTURE(idea);
        CHECK(reader.kinds(idea) == Kinds{"cowl"});
    }
    CHECK(reader.kinds("a hat, no pompom, and a cowl") == Kinds{"hat", "cowl"});
    CHECK(reader.kinds("a hat with no brim") == Kinds{"hat"});
}

TEST_CASE("what is asked for without a name is asked back, and talk is not") {
    Reader reader;
    for (const char* idea :
         {"I saw a hanging chair of yarn. Do that!", "weave one",
          "would you consider weaving another?", "cover for my old hymn book, the spine is gone"})
        CHECK_FALSE(reader.read(idea).not_an_idea);
    for (const char* talk : {"we used to have a sheep called Blanket", "our cat is named Mittens",
                             "the hat from the play shrank"})
        CHECK(reader.kinds(talk).empty());
}

TEST_CASE("a border in another yarn leaves this one the rest") {
    Reader reader;
    CHECK(reader.read("a shawl, this for the border").role == YarnRole::border);
    const auto taken =
        reader.read("two-tone shawl, your yarn for the body and black for the edging");
    CHECK(taken.role == YarnRole::with_another);
    CHECK(taken.left_out == Kinds{"edging"});
}

TEST_CASE("a colour by itself is told, whichever it is") {
    Reader reader;
    for (const std::string colour : {"red", "yellow", "cream", "navy"}) {
        CAPTURE(colour);
        CHECK(reader.read("a hat, " + colour).left_out == Kinds{colour});
        CHECK(reader.read("a rug, " + colour + ", please").left_out == Kinds{colour});
        CHECK(reader.read("a " + colour + " hat").left_out == Kinds{colour});
    }
}

TEST_CASE("how wide a piece comes out is told where its length is measured") {
    Curlew asked;
    const auto answer = asked.answer("how wide would a scarf be?");
    REQUIRE(answer.answered);
    CHECK(answer.article->measure == "length");
    CHECK(answer.wide > centimetres(10));
    CHECK(answer.wide < centimetres(80));
    CHECK(asked.answer("how large would a hat be?").wide == Length{});
}

TEST_CASE("a size without a unit is in the one in which the article is made so large") {
    Curlew asked;
    const auto in_cm = asked.answer("a cushion 45 x 45").things.front();
    CHECK(in_cm.in_cm);
    CHECK_FALSE(in_cm.in_inches);
    CHECK(in_cm.size == centimetres(45));
    const auto in_inches = asked.answer("a scarf 70 x 8").things.front();
    CHECK(in_inches.in_inches);
    CHECK_FALSE(in_inches.in_cm);
    CHECK(in_inches.size > centimetres(177));
    CHECK(in_inches.size < centimetres(179));
    // Where it is of neither, or was said, nothing is guessed.
    const auto neither = asked.answer("a scarf 900 x 700").things.front();
    CHECK_FALSE(neither.in_cm);
    CHECK_FALSE(neither.in_inches);
    const auto said = asked.answer("a cushion 45 x 45 cm").things.front();
    CHECK_FALSE(said.in_cm);
    CHECK(said.size == centimetres(45));
}

TEST_CASE("a part alone takes less than the whole, and all its parts no more") {
    Curlew asked;
    const auto sleeves = asked.answer("just the sleeves of a jumper");
    REQUIRE(sleeves.answered);
    CHECK(sleeves.part > Length{});
    CHECK(sleeves.part < sleeves.need.mid);
    const auto yoke = asked.answer("just the yoke of a jumper");
    CHECK(yoke.part > Length{});
    CHECK(sleeves.part + yoke.part < sleeves.need.mid);
    CHECK(asked.answer("just the lining of a hat").part == Length{});
    CHECK(asked.answer("a jumper").part == Length{});
}

TEST_CASE("so many skeins hold so much of the batch") {
    Curlew asked;
    const auto one = asked.answer("a hat from one skein");
    const auto two = asked.answer("a hat from two skeins");
    CHECK(one.at_hand > Length{});
    CHECK(two.at_hand >= one.at_hand);
    CHECK(asked.answer("a hat from forty skeins").at_hand == Length{});
    CHECK(asked.answer("a hat").at_hand == Length{});
}

TEST_CASE("what no template makes is named in the question, wherever it comes from") {
    Reader reader;
    // Of households, wardrobes, nurseries, pets, gardens, churches, stages, sports, other
    // countries.
    const std::string unmade[] = {
        "ironing board cover", "bed tidy",     "wall pocket",     "log basket",
        "plant cosy",          "kneeling pad", "hive cover",      "bomber jacket",
        "false collar",        "sock garters", "dhoti",           "hakama",
        "foustanella",         "pram liner",   "tummy time mat",  "dummy strap",
        "dog harness",         "bird roost",   "snuggle sack",    "horse boots",
        "lectern fall",        "chalice veil", "chuppah",         "chain mail",
        "fairy wings",         "number line",  "story sack",      "boxing wraps",
        "golf headcover",      "skate guards", "handlebar mitts", "tool belt",
        "crutch pad",          "wrist brace",  "comfort doll",    "yarn bra",
        "needle book",         "drive band",   "mouse cosy",      "passport holder",
    };
    for (const auto& thing : unmade) {
        CAPTURE(thing);
        const auto taken = reader.read("a " + thing + ", please");
        CHECK_FALSE(taken.not_an_idea);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().said.find(thing) != std::string::npos);
        CHECK(taken.wanted.front().kind == thing);
    }
}

TEST_CASE("a thing of another name is the kind that it is, or the nearest") {
    Reader reader;
    const std::pair<std::string, std::string> kinds[] = {
        {"lopapeysa", "pullover"},
        {"lusekofte", "pullover"},
        {"selbu mittens", "mittens"},
        {"carthen", "blanket"},
        {"gabbeh", "rug"},
        {"noren", "panel"},
        {"zabuton", "cushion"},
        {"tenugui", "towel"},
        {"chuspa", "pouch"},
        {"crios", "band"},
        {"dilly bag", "bag"},
        {"footies", "socks"},
        {"pew cushion", "cushion"},
        {"nursing shawl", "shawl"},
        {"school bag", "bag"},
        {"drip mat", "mug mat"},
        {"plant mat", "table mat"},
        {"pot grabber", "pot holder"},
        {"travel blanket", "blanket"},
        {"khata", "scarf"},
    };
    for (const auto& [name, kind] : kinds) {
        CAPTURE(name);
        const auto taken = reader.read("a " + name);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().kind == kind);
    }
    for (const std::string hat : {"glengarry", "balmoral", "pixie hood", "bowler", "biretta"}) {
        CAPTURE(hat);
        const auto taken = reader.read("a " + hat);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().nearest == "hat");
    }
}
