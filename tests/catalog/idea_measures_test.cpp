// Measures as people write them, and questions on what a yarn does: each class with what must not
// be caught beside it.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/suggestion/understand.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

using Reader = catalog::IdeaReader;

double size_of(Reader& reader, const std::string& idea) {
    const auto taken = reader.read(idea);
    if (taken.wanted.empty() || taken.wanted.front().sizes.empty()) return 0;
    return in_centimetres(taken.wanted.front().sizes.front());
}

double needle_of(Reader& reader, const std::string& idea) {
    const auto needle = reader.read(idea).needle;
    return needle ? in_millimetres(*needle) : 0;
}

double grams_of(Reader& reader, const std::string& idea) {
    const auto taken = reader.read(idea);
    const bool stated = !taken.wanted.empty() && taken.wanted.front().needs_mass;
    return stated ? in_grams(*taken.wanted.front().needs_mass) : 0;
}

struct Question {
    const char* idea;
    Topic topic;
};

}  // namespace

TEST_CASE("a length told in two pieces is their sum, in feet and inches as in halves") {
    Reader reader;
    const std::pair<const char*, double> told[] = {
        {"a scarf, 5'4\" long", 64 * 2.54},
        {"a scarf 5' 4\" long", 64 * 2.54},
        {"a scarf, 5 ft 4 in", 64 * 2.54},
        {"a runner, five foot six", 66 * 2.54},
        {"a runner, four foot nine, done by Easter", 57 * 2.54},
        {"a shawl 6' across", 72 * 2.54},
        {"a scarf a yard and a half long", 137.16},
        {"a shawl a metre and a half across", 150},
        {"a stole two yards and a quarter long", 205.74},
        {"a rug a metre wide", 100},
        {"table runner 14\" x 6'", 72 * 2.54},
        {"a cowl 24-26 inches round", 26 * 2.54},
        {"a scarf 150 to 180 cm long", 180},
        {"a scarf between 150 and 180 cm long", 180},
        {"a scarf six foot, two hats", 72 * 2.54},  // beside it: a count
    };
    for (const auto& [idea, cm] : told) {
        CAPTURE(std::string(idea));
        CHECK(size_of(reader, idea) == doctest::Approx(cm));
    }
}

TEST_CASE("how tall somebody is, is told, and is no size of what is made") {
    Reader reader;
    for (const char* idea :
         {"scarf for a lad of six foot three", "a jumper for my husband, he is 6'2\"",
          "muffler for a gentleman of 80, six foot one and cold",
          "cardigan for my aunt, who is five foot two"}) {
        CAPTURE(std::string(idea));
        const auto taken = reader.read(idea);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().sizes.empty());
        CHECK_FALSE(taken.left_out.empty());
    }
    CHECK(size_of(reader, "a scarf for my aunt, five foot long") == doctest::Approx(152.4));
}

TEST_CASE("needles by number, in either system, are what the published tables say") {
    Reader reader;
    const std::pair<const char*, double> told[] = {
        {"a hat on 5 mms", 5},
        {"an afghan on size 10s", 6},
        {"a cowl on 8s", 5},
        {"mittens on number sevens", 4.5},
        {"a vest, 22 sts over 4 inches on 6s", 4},
        {"a scarf on 10s (UK)", 3.25},
        {"on the old size 8s, a hat", 4},
        {"a cardigan on a size six needle", 4},
        {"a hat on 5.5s", 5.5},
        {"a hat for my gran on size 10s", 6},
        {"socks on size 2s", 2.75},
    };
    for (const auto& [idea, mm] : told) {
        CAPTURE(std::string(idea));
        CHECK(needle_of(reader, idea) == doctest::Approx(mm));
    }
    for (const char* idea : {"a vest, size 8", "socks, size UK 7", "hats for size 6 dolls"})
        CHECK(needle_of(reader, idea) == 0);
}

TEST_CASE("balls at so much each are so many times that") {
    Reader reader;
    const std::pair<const char*, double> told[] = {
        {"a vest took 6 balls at 50 g each", 300},
        {"a vest takes 12 50g balls", 600},
        {"a pullover takes seven 100g skeins", 700},
        {"a shawl: 4 balls of 25 g", 100},
        {"three 100 g skeins for a shawl", 300},
        {"a vest wants a pound of wool", 453.592},
        {"mittens, 2-3 oz", 85.0486},
        {"a hat took 50 g", 50},
    };
    for (const auto& [idea, grams] : told) {
        CAPTURE(std::string(idea));
        CHECK(grams_of(reader, idea) == doctest::Approx(grams));
    }
}

TEST_CASE("so many to the inch are ends on the loom, stitches on needles, wraps round a ruler") {
    Reader reader;
    CHECK(in_ends_per_10cm(*reader.read("a bag, woven tight, 12 to the inch").sett) ==
          doctest::Approx(47.244).epsilon(0.001));
    CHECK(in_ends_per_10cm(*reader.read("a stole with the 7.5 heddle").sett) ==
          doctest::Approx(29.528).epsilon(0.001));
    CHECK(in_stitches_per_10cm(*reader.read("a hat knitted at 5 to the inch").gauge) ==
          doctest::Approx(19.685).epsilon(0.001));
    CHECK_FALSE(reader.read("a bag, 12 to the inch").sett);
    CHECK(reader.read("my yarn is about 11 wraps, a hat").wanted.front().kind == "hat");
    CHECK(reader.read("ten wraps for the choir").wanted.front().kind == "wrap");
}

TEST_CASE("a number in shoes is their size, and no inches") {
    Reader reader;
    for (const char* idea :
         {"walking socks, he takes a 7 in shoes", "socks, a size eleven in boots",
          "socks for a man who wears 10 1/2 shoes"}) {
        CAPTURE(std::string(idea));
        const auto taken = reader.read(idea);
        CHECK_FALSE(taken.shoe.empty());
        CHECK(taken.wanted.front().sizes.empty());
    }
    CHECK(reader.read("men's 9 socks").wanted.front().count == 1);
    CHECK(reader.read("socks, 7 in tall").shoe.empty());
}

TEST_CASE("a question is taken by what it asks, however it is put") {
    Reader reader;
    const Question questions[] = {
        {"would seed stitch hide the slubs in a cowl?", Topic::stitches},
        {"What size needles for a cowl?", Topic::needle},
        {"would I need to alternate skeins in a vest?", Topic::skeins},
        {"stocking stitch scarf, would it slant on me", Topic::bias},
        {"what happens to a hat if it goes through her dryer?", Topic::care},
        {"a blanket, everything there goes in the hot wash", Topic::care},
        {"Will the colours go stripy on socks?", Topic::pooling},
        {"would mittens keep the wind out?", Topic::warmth},
        {"would the elbows go on a cardigan in a week? it must not fall apart", Topic::wear},
        {"would a cowl drive me mad on bare skin?", Topic::itch},
        {"can you cut it up for a vest?", Topic::cutting},
        {"would a shawl stand up by itself?", Topic::drape},
        {"would the cuffs go baggy on mitts?", Topic::spring},
        {"could I dye a shawl afterwards?", Topic::dye},
        {"how many evenings is a cardigan?", Topic::time},
        {"what would a pullover cost me?", Topic::cost},
        {"would a beginner manage a shawl?", Topic::skill},
        {"would a cardigan be pushing it?", Topic::enough},
    };
    for (const auto& [idea, topic] : questions) {
        CAPTURE(std::string(idea));
        CHECK(reader.read(idea).about(topic));
    }
    // Told, not asked.
    for (const char* idea : {"a hat that will not cost much", "a strong bag", "a quick cowl"})
        CHECK(reader.read(idea).topics.empty());
}

TEST_CASE("a question that nothing answers is told, and one that only suggests is not") {
    Reader reader;
    for (const char* idea : {"would it smell of sheep, a pullover?",
                             "Will it scare the cat, a rug?", "a hat, does it float?"}) {
        CAPTURE(std::string(idea));
        CHECK_FALSE(reader.read(idea).unanswered.empty());
    }
    for (const char* idea :
         {"could you make a hat?", "isn't it crying out to be a shawl?", "how about mittens?",
          "why not a cowl?", "what about a vest?", "would you knit a scarf for my sister?",
          "a hat?", "How heavy would a cardigan come out in that?",
          "How many evenings would a jumper take?"}) {
        CAPTURE(std::string(idea));
        CHECK(reader.read(idea).unanswered.empty());
    }
}

TEST_CASE("all of it is to be used, by whatever is not to be left") {
    Reader reader;
    for (const char* idea :
         {"as big a blanket as it'll go", "a rug, I don't want to see one yard left over",
          "a scarf and not a metre to spare", "a stole until there's no more yarn",
          "a shawl as large as you can manage", "a throw till you're out of yarn"}) {
        CAPTURE(std::string(idea));
        CHECK(reader.read(idea).role == YarnRole::all);
    }
    CHECK(reader.read("hats till it runs out").about(Topic::count));
    CHECK(reader.read("a hat, with 20 yards left over").role == YarnRole::unsaid);
}

TEST_CASE("a yarn named by its colour is another one, and a coloured part is not") {
    Reader reader;
    for (const char* idea :
         {"a scarf with some of that cream you've got", "a hat in this and your grey",
          "a cowl with the brown you have", "mittens with a bit of red"}) {
        CAPTURE(std::string(idea));
        CHECK(reader.read(idea).role == YarnRole::with_another);
    }
    for (const char* idea : {"a hat with a red brim", "a bag with yellow buttons", "a red hat"})
        CHECK(reader.read(idea).role == YarnRole::unsaid);
}

TEST_CASE("what is shrunk on purpose is fulled, and what may shrink is asked") {
    Reader reader;
    for (const char* idea : {"mittens, knit too big and then shrunk in the washer on purpose",
                             "slippers, boil them after", "a bag, felt it afterwards"})
        CHECK(reader.read(idea).role == YarnRole::fulled);
    CHECK(reader.read("would a hat shrink in the wash?").role == YarnRole::unsaid);
}

TEST_CASE("what another tongue puts in its own order is measured all the same") {
    Reader reader;
    CHECK(in_stitches_per_10cm(*reader.read("a cowl on 4,5 mm, 20 stitches on 10 cm").gauge) ==
          doctest::Approx(20));
    CHECK(in_ends_per_10cm(*reader.read("a stole, 40 ends on 10 cm").sett) == doctest::Approx(40));
    CHECK(in_ends_per_10cm(*reader.read("cotton warp, 6 per cm, table runner").sett) ==
          doctest::Approx(60));
    CHECK(in_ends_per_10cm(*reader.read("5 dents per cm, a shawl").sett) == doctest::Approx(50));
    CHECK(size_of(reader, "a blanket 1m20 x 1m50") == doctest::Approx(150));
    CHECK(size_of(reader, "a scarf 30 cm broad and 2 m long") == doctest::Approx(200));
    CHECK(size_of(reader, "a runner seventy inches long by fifteen") == doctest::Approx(177.8));
    CHECK(size_of(reader, "a strap 1 1/2 inches wide and 4 ft") == doctest::Approx(121.92));
    CHECK(reader.read("socks in 43 for my man").shoe == "43");
    CHECK(reader.read("a cardigan in 42").letters == "size 42");
    CHECK(reader.read("a hat in 2 colours").letters.empty());
}

TEST_CASE("yarn that is asked of is at hand, and what a thing takes is not") {
    Reader reader;
    for (const char* idea :
         {"500 m, is this enough for a cardigan?", "the 140 m skein alone, does it give a hat?",
          "120 m in the smallest, enough for mitts?"}) {
        CAPTURE(std::string(idea));
        const auto taken = reader.read(idea);
        CHECK(taken.at_hand);
        CHECK_FALSE(taken.wanted.front().needs);
    }
    CHECK(reader.read("a hat takes 140 m, is there enough?").wanted.front().needs);
}

TEST_CASE("a thing named again for another one is as many of it") {
    Reader reader;
    const std::pair<const char*, int> named[] = {
        {"a hat for me, a hat for you, a hat for the neighbour", 3},
        {"a scarf and another scarf", 2},
        {"mitts for me and mitts for my sister", 2},
        {"a scarf, maybe a ribbed scarf", 1},
        {"a hat for dad or a hat for mum", 1},
        {"cast on 120 for a cowl", 1},
    };
    for (const auto& [idea, count] : named) {
        CAPTURE(std::string(idea));
        CHECK(reader.read(idea).wanted.front().count == count);
    }
}

TEST_CASE("what a yarn must be is spoken of, and two faces are the fabric of that name") {
    Reader reader;
    CHECK(reader.read("a chemo cap, very soft").about(Topic::itch));
    CHECK(reader.read("a scarf that does not itch").about(Topic::itch));
    CHECK(reader.read("a hat, super warm please").about(Topic::warmth));
    CHECK(reader.read("blanket, it has to survive the dog").about(Topic::wear));
    CHECK(reader.read("double knitting cushion, no wrong side").fabric.knitted ==
          "double knitting");
    CHECK(reader.read("a vest in double knitting wool").weight == "light");
}

TEST_CASE("what is wondered, doubted or made a condition of is asked too") {
    Reader reader;
    const Question questions[] = {
        {"I wonder whether it would pill as a cardigan", Topic::wear},
        {"worried it would felt, but a hat", Topic::felting},
        {"not sure it's warm enough, a vest", Topic::warmth},
        {"as long as it won't bias, a stocking stitch scarf", Topic::bias},
        {"might be too warm for a hat in June", Topic::warmth},
        {"only if it holds its shape: a hat", Topic::spring},
        {"assuming it's strong enough, socks", Topic::wear},
    };
    for (const auto& [idea, topic] : questions) {
        CAPTURE(std::string(idea));
        CHECK(reader.read(idea).about(topic));
    }
    CHECK(reader.read("a hat if you like").topics.empty());
    CHECK(in_stitches_per_10cm(*reader.read("I usually get 5 to the inch on 7s, a vest").gauge) ==
          doctest::Approx(19.685).epsilon(0.001));
}

TEST_CASE("balls with what each of them holds are multiplied, and a total is not") {
    Reader reader;
    CHECK(grams_of(reader, "a cardigan, 4 skeins of sport at 100 g each") == doctest::Approx(400));
    CHECK(grams_of(reader, "she needs 10 balls of dk (50g ones) for the jumper") ==
          doctest::Approx(500));
    CHECK(grams_of(reader, "blanket, 12 balls of aran (50 g)") == doctest::Approx(600));
    CHECK(grams_of(reader, "vest, 6 balls of aran (300 g)") == doctest::Approx(300));
    CHECK(grams_of(reader, "hat, 2 balls, 100 g") == doctest::Approx(100));
    const auto lengths = reader.read("5 balls, 90 m each, for a cowl");
    REQUIRE(lengths.wanted.size() == 1);
    REQUIRE(lengths.wanted.front().needs.has_value());
    CHECK(in_metres(*lengths.wanted.front().needs) == doctest::Approx(450));
}

TEST_CASE("a unit said of all sizes is of those that have none") {
    Reader reader;
    CHECK(size_of(reader, "cushion 18x18, runner 12x48 (all inches)") == doctest::Approx(45.72));
    CHECK(size_of(reader, "cushion 45x45 and runner 30x120, all cm") == doctest::Approx(45));
    CHECK(size_of(reader, "cushion 18 inches, all in all") == doctest::Approx(45.72));
}

TEST_CASE("a weight beside another strand is that strand's") {
    Reader reader;
    CHECK(reader.read("a shawl held with a strand of laceweight mohair").weight.empty());
    CHECK(reader.read("a shawl of laceweight mohair").weight == "lace");
    CHECK(reader.read("fingering weight hat").weight == "super fine");
}

TEST_CASE("what is asked outright is answered, what only describes is not") {
    Reader reader;
    CHECK(reader.read("Would it make a warm vest?").about(Topic::warmth));
    CHECK(reader.read("will this be a soft scarf?").about(Topic::itch));
    CHECK_FALSE(reader.read("a warm vest").about(Topic::warmth));
    CHECK_FALSE(reader.read("A soft scarf?").about(Topic::itch));
}

TEST_CASE("a sentence without its subject asks nothing") {
    Reader reader;
    CHECK(reader.read("ply it, then socks. will live longer than us").unanswered.empty());
    CHECK(reader.read("don't do it as a scarf, do it as a hat").unanswered.empty());
    CHECK(reader.read("a hat. will it dance in the wind").unanswered ==
          "will it dance in the wind");
}
