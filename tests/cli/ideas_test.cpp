// Replies to classes of ideas: what was read is told as it was meant.
#include <doctest/doctest.h>

#include "cli/bulk_answers.hpp"
#include "cli/output/answer_words.hpp"
#include "cli/output/reply.hpp"
#include "engine/suggestion/answer.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

class Heron {
  public:
    SuggestionAnswer answer(const std::string& idea) {
        Suggestion s;
        s.idea = idea;
        return answerer_.answer(s);
    }
    std::string reply_to(const std::string& idea) {
        Suggestion s;
        s.idea = idea;
        return reply(s, answerer_.answer(s), asked::heron().yarn, asked::heron().units, 2000);
    }
    std::string told(const std::string& idea) {
        Suggestion s;
        s.idea = idea;
        const auto a = answerer_.answer(s);
        const auto& q = asked::heron();
        return reply_with_care(s, a, cautions_on_answer(s, a, q), q);
    }

  private:
    Answerer answerer_{ground_of(asked::heron())};
};

}  // namespace

TEST_CASE("a fabric by another name is told with the name that was reckoned") {
    Heron heron;
    CHECK(holds(heron.reply_to("moss stitch cowl"), "For moss stitch I reckoned seed."));
    CHECK(holds(heron.reply_to("fair isle vest"), "For fair isle I reckoned stranded."));
    for (const auto* idea : {"cabled hat", "ribbed hat", "garter stitch scarf", "seed stitch cowl"})
        CHECK(holds(heron.reply_to(idea), "I reckoned it in "));
}

TEST_CASE("a limit is answered in the unit that was said") {
    Heron heron;
    CHECK(holds(heron.reply_to("a cowl from no more than 150 g"), "Of this yarn 150 g would do."));
    CHECK(holds(heron.reply_to("a cowl in under 20 m"), "Of this yarn 20 m would not do"));
    CHECK_FALSE(holds(heron.reply_to("a cowl, no more than 150 g"), "is said to take"));
}

TEST_CASE("a part alone takes what its pieces do, one that no piece is, is said") {
    Heron heron;
    CHECK(holds(heron.reply_to("just the sleeves of a jumper"),
                "That is all of it; 'just the sleeves' would take about 293 m: enough."));
    CHECK(holds(heron.reply_to("for the heels and toes of socks"), "would take about 57 m"));
    CHECK(holds(heron.reply_to("just the lining of a hat"), "the figure is for the whole piece"));
}

TEST_CASE("so many skeins are what they hold, a size without a unit is in the one that fits") {
    Heron heron;
    CHECK(holds(heron.reply_to("a hat from one skein"), "1 skein (about 134 m) would not do"));
    CHECK(holds(heron.reply_to("a cushion 45x45"), "45 by 45: I read that as centimetres."));
    CHECK(holds(heron.reply_to("a scarf, 70 x 8"), "70 by 8: I read that as inches."));
}

TEST_CASE("held with another yarn is not shared between two") {
    Heron heron;
    CHECK(holds(heron.reply_to("a cowl held with mohair"), "Held together with another yarn"));
    const auto striped = heron.reply_to("a striped cowl");
    CHECK(holds(striped, "A second yarn would share the work"));
    CHECK_FALSE(holds(striped, "Held together"));
}

TEST_CASE("an allergy is no question of softness") {
    Heron heron;
    const auto said = heron.reply_to("I'm allergic to wool, but a throw?");
    CHECK(holds(said, "An allergy is no matter of softness"));
    CHECK_FALSE(holds(said, "few people would find that it itches"));
}

TEST_CASE("a blanket's size is no square's, and what fits nobody is said") {
    Heron heron;
    const auto blanket = heron.answer("knitted blanket of squares, 90 cm");
    REQUIRE(blanket.answered);
    REQUIRE(blanket.article->measure == "side of a square");
    CHECK(in_centimetres(blanket.size) == doctest::Approx(30));
    const auto square = heron.answer("knitted blanket of squares, 30 cm");
    CHECK(in_centimetres(square.size) == doctest::Approx(30));
    CHECK(holds(heron.reply_to("a jumper, 2 inch chest"), "fits nobody"));
}

TEST_CASE("what is made for a baby is no grown-up's, whatever its stitch") {
    Heron heron;
    for (const auto* fabric : {"garter", "stocking stitch", "basketweave", "cables"})
        for (const auto* kind : {"cardigan", "blanket", "hat", "pullover"}) {
            const auto a = heron.answer(std::string("knitted ") + kind + " in " + fabric);
            INFO(kind, " in ", fabric);
            if (a.answered) CHECK_FALSE(a.article->for_baby);
        }
    const auto a = heron.answer("garter cardigan for a baby");
    REQUIRE(a.answered);
    CHECK(a.article->for_baby);
}

TEST_CASE("of two things for two people the caution is for the small one, the size for each") {
    Heron heron;
    const auto said = heron.reply_to("a hat for grandpa and mittens for the baby");
    CHECK(holds(said, "for a baby"));
    CHECK(holds(said, "For the baby: no cords, fringes, holes or loose loops."));
    CHECK_FALSE(holds(said, "The figure is for a grown-up's size"));
}

TEST_CASE("a grown-up's template for somebody small says so") {
    Heron heron;
    CHECK(holds(heron.reply_to("a poncho for a lad of 12"), "grown-up's size"));
    CHECK(holds(heron.reply_to("scarf for a toddler"), "child"));
}

TEST_CASE("how long a thing is that is measured round somebody is no size of it") {
    Heron heron;
    const auto mitts = heron.answer("wrist warmers 20 cm long");
    REQUIRE(mitts.answered);
    CHECK(mitts.size == mitts.article->ideal);
    CHECK(holds(heron.reply_to("wrist warmers 20 cm long"), "The length of 20 cm is not reckoned"));
    CHECK(in_centimetres(heron.answer("hat 54 cm round").size) == doctest::Approx(54));
    CHECK(in_centimetres(heron.answer("scarf 140 cm long").size) == doctest::Approx(140));
}

TEST_CASE("what is said of each is of one, and two may be of two stitches") {
    Heron heron;
    const auto each = heron.answer("how many dishcloths at 30 m each?");
    REQUIRE(each.answered);
    CHECK(each.things.front().wanted.count == 1);
    CHECK(in_metres(each.need.mid) == doctest::Approx(30));
    const auto two = heron.answer("two shawls: one lace, one garter");
    REQUIRE(two.things.size() == 2);
    CHECK(two.things[0].wanted.fabric.knitted == "eyelet lace");
    CHECK(two.things[1].wanted.fabric.knitted == "garter");
}

TEST_CASE("what a baby must not meet is said once, in its full words") {
    Heron heron;
    for (const std::string idea : {"a hat for a newborn", "baby bonnet and mittens",
                                   "baby cardigan and a hat", "mittens for a 6 month old"}) {
        CAPTURE(idea);
        const auto said = heron.told(idea);
        const auto first = said.find("holes or loose loops");
        CHECK(first != std::string::npos);
        CHECK(said.find("loose loops", first + 20) == std::string::npos);
        CHECK(said.find("grown-up") == std::string::npos);
    }
}

TEST_CASE("what the loom cannot weave comes behind what can be made") {
    Heron heron;
    for (const std::string idea : {"wash cloths", "a rug for beside the bed"}) {
        CAPTURE(idea);
        CHECK(!holds(heron.reply_to(idea), "needs four shafts"));
    }
    CHECK(holds(heron.reply_to("woven wash cloths"), "needs four shafts"));
}

TEST_CASE("how many are asked for, and what is ruled out, is answered as such") {
    Heron heron;
    CHECK(
        holds(heron.reply_to("how many pairs of socks could you get"), "How many pairs: about 1"));
    CHECK(holds(heron.reply_to("how many hats would it make"), "about 3 of them"));
    CHECK(holds(heron.reply_to("nothing with cables please"), "Not cables, then."));
    CHECK(holds(heron.reply_to("nothing lacy"), "Not eyelet lace, then."));
    CHECK(holds(heron.reply_to("cowl, 9 in tall"), "The height of 9.0 in is not reckoned"));
}
