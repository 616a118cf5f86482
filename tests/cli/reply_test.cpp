#include "cli/output/reply.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "cli/bulk_answers.hpp"
#include "cli/output/layout.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

constexpr const char* ideas[] = {"lace shawl",    "cabled hat",
                                 "weave a scarf", "socks",
                                 "hat and mitts", "10 hats",
                                 "crochet shawl", "lovely!",
                                 "is it itchy?",  "use it as weft in a runner",
                                 "baby blanket",  "twill cushion",
                                 "mittens",       "a rug",
                                 "tea cosy",      "fingerless mitts",
                                 "plain cowl",    "xyzzy"};

Suggestion random_suggestion(std::mt19937& random) {
    const auto below = [&](unsigned most) { return double(random() % most); };
    Suggestion out;
    out.idea = ideas[random() % std::size(ideas)];
    if (random() % 3 == 0) out.needs = metres(20 + below(1500));
    if (random() % 3 == 0) out.size = centimetres(10 + below(250));
    if (random() % 3 == 0) out.gauge = stitches_per_10cm(10 + below(30));
    if (random() % 3 == 0) out.sett = ends_per_10cm(20 + below(120));
    if (random() % 4 == 0) out.craft = random() % 2 == 0 ? Craft::knitted : Craft::woven;
    if (random() % 4 == 0) out.colours = 1 + int(random() % 3);
    return out;
}

bool ends_a_sentence(char c) { return c == '.' || c == '!' || c == '?'; }

// Forty suggestions with their answers, which point into the answerer.
class Talk {
  public:
    Talk(const Question& q, unsigned seed) : answerer_(ground_of(q)) {
        std::mt19937 random{seed};
        for (int i = 0; i < 40; ++i) {
            const auto s = random_suggestion(random);
            all_.emplace_back(s, answerer_.answer(s));
        }
    }
    auto begin() const { return all_.begin(); }
    auto end() const { return all_.end(); }

  private:
    Answerer answerer_;
    std::vector<std::pair<Suggestion, SuggestionAnswer>> all_;
};

}  // namespace

TEST_CASE("a reply thanks, keeps to its length, and ends with a whole sentence") {
    for (unsigned seed = 0; seed < 6; ++seed) {
        const auto q = asked::random_batch(seed, 1 + seed);
        const Talk all(q, seed);
        for (const auto& [s, a] : all)
            for (std::size_t most = 60; most <= 600; most += 60) {
                const auto said = reply(s, a, q.yarn, q.units, most);
                INFO(said);
                CHECK(characters(said) <= most);
                REQUIRE_FALSE(said.empty());
                CHECK(said.find("Thank you for ") == 0);
                CHECK(ends_a_sentence(said.back()));
                CHECK_FALSE(holds(said, "  "));
                CHECK_FALSE(holds(said, "nan"));
            }
    }
}

TEST_CASE("with room enough the metres are told, in the person's units") {
    for (const auto choice : {UnitChoice::metric, UnitChoice::imperial, UnitChoice::both}) {
        auto q = asked::random_batch(3, 4);
        q.units = Units{choice};
        const Talk all(q, 99);
        for (const auto& [s, a] : all) {
            if (!a.answered) continue;
            const auto said = reply(s, a, q.yarn, q.units, 2000);
            INFO(said);
            CHECK(holds(said, q.units.yarn(a.need.mid)));
            CHECK(holds(said, "I have " + q.units.yarn(q.yarn.length.mid)));
            CHECK(holds(said, "another colour") == (s.colours > 1));
            if (a.reach == Reach::short_of) CHECK(holds(said, q.units.yarn(a.short_by)));
            if (a.reach == Reach::enough_if_smaller)
                CHECK(holds(said, q.units.size(a.size_that_fits)));
            if (a.other_craft_reaches) CHECK(holds(said, "The yarn would do for a"));
        }
    }
}

TEST_CASE(
    "the usual reply is no longer than promised, and a shorter one leaves out, never changes") {
    const auto& q = asked::heron();
    const Talk several(q, 5);
    for (const auto& [s, a] : several) {
        const auto usual = reply(s, a, q.yarn, q.units);
        CHECK(characters(usual) <= reply_length);
        const auto all = reply(s, a, q.yarn, q.units, 5000);
        const auto brief = reply(s, a, q.yarn, q.units, 200);
        std::size_t at = 0;
        for (const auto& word : apart(brief, ' ')) {
            const auto found = all.find(word, at);
            INFO(brief, " | ", all);
            REQUIRE(found != std::string::npos);
            at = found + word.size();
        }
    }
}

TEST_CASE("one thing has its article, a pair has none") {
    const auto& q = asked::heron();
    Answerer answerer(ground_of(q));
    const std::pair<const char*, const char*> cases[] = {
        {"cabled hat", "the idea of a hat! A knitted hat"},
        {"weave a scarf", "of a scarf! A plain woven scarf"},
        {"plain socks", "of socks! Knitted plain socks"},
        {"mittens", "of mittens! Knitted mittens"}};
    for (const auto& [idea, said] : cases) {
        Suggestion s;
        s.idea = idea;
        CHECK(holds(reply(s, answerer.answer(s), q.yarn, q.units), said));
    }
}

TEST_CASE("what was not understood is asked back, in the reply and as the verdict") {
    const auto& q = asked::heron();
    Answerer answerer(ground_of(q));
    Suggestion s;
    s.idea = "xyzzy";
    const auto a = answerer.answer(s);
    REQUIRE_FALSE(a.answered);
    CHECK(metres_verdict(a, q.units) == "asked back");
    CHECK(reply(s, a, q.yarn, q.units) == "Thank you for the idea! " + capital(a.ask));
}

TEST_CASE("the verdict of the metres is the reach, with what lacks") {
    const auto q = asked::random_batch(2, 2);
    const Talk all(q, 8);
    for (const auto& [s, a] : all) {
        const Units units{UnitChoice::imperial};
        const auto said = metres_verdict(a, units);
        if (!a.answered)
            CHECK((said == "asked back" || said == "no idea for an article" ||
                   said == "a question about the yarn"));
        else if (a.reach == Reach::short_of)
            CHECK(said == "short by " + units.yarn(a.short_by));
        else
            CHECK(said == words(a.reach));
    }
}

TEST_CASE("a reply names no fault that costs less than three points") {
    // Named from one point on, it talked every article down; nobody noticed.
    Suggestion shawl;
    shawl.idea = "a triangle shawl";
    auto a = Answerer(ground_of(asked::heron())).answer(shawl);
    REQUIRE(a.answered);
    for (auto& factor : a.judgement.factors) factor = {1, 0, 1, 1, 0};
    auto& cover = a.judgement.factors[static_cast<std::size_t>(FactorName::cover)];
    const auto said = [&](double cost) {
        cover.cost = cost;
        return reply(shawl, a, asked::heron().yarn, asked::heron().units);
    };
    CHECK_FALSE(holds(said(2.9), "would not close"));
    CHECK(holds(said(3.1), "would not close"));
}

namespace {

// What Heron's reply to an idea says.
std::string heard(const std::string& idea) {
    static const auto q = asked::heron();
    Suggestion s;
    s.idea = idea;
    const auto a = Answerer(ground_of(q)).answer(s);
    return reply(s, a, q.yarn, q.units);
}

}  // namespace

TEST_CASE("what was heard as talk is told, so that a wish taken for a tale is seen") {
    const char* tales[] = {"My sister knitted a dress for the fair. Make mittens",
                           "Everyone says dress, I say mittens",
                           "I've already got the dress. Mittens!"};
    for (const auto* tale : tales) {
        CAPTURE(tale);
        const auto said = heard(tale);
        CHECK(holds(said, "the idea of mittens!"));
        CHECK(holds(said, "I took as said of something else: dress."));
    }
    // What is made in the end was no tale, and what it is worn with is plain.
    CHECK_FALSE(holds(heard("I made cushions once, do cushions again"), "something else"));
    CHECK_FALSE(holds(heard("a hat to go under my dress"), "something else"));
}

TEST_CASE("whoever's age is not said is not taken for a child in silence") {
    for (const std::string who : {"son", "nephew", "nieces", "daughter"}) {
        CAPTURE(who);
        const auto said = heard("a hat for my " + who);
        CHECK(holds(said, "How old the " + who + " may be I do not know"));
        CHECK(holds(said, "for a child no cords or long fringes"));
        CHECK(holds(said, "roll-brim hat"));
        CHECK_FALSE(holds(heard("a hat for my " + who + " at uni"), "How old"));
        const auto small = heard("a hat for my " + who + ", aged 6");
        CHECK_FALSE(holds(small, "How old"));
        CHECK(holds(small, "child's hat"));
    }
}

TEST_CASE("of several things each with a size says it, in the sender's units") {
    const auto inches = heard("a scarf 60 inches long and a hat 22 inches round");
    CHECK(holds(inches, "scarf (60 in long) about"));
    CHECK(holds(inches, "hat (22 in round the head) about"));
    const auto metric = heard("a scarf 150 cm long and a hat");
    CHECK(holds(metric, "scarf (150 cm long) about"));
    CHECK(holds(metric, "roll-brim hat about"));
    CHECK(holds(heard("a hat at 5 st to the inch"), "At 5.0 st/in"));
    CHECK(holds(heard("a hat at 22 st to 10 cm"), "At 22 st/10 cm"));
}

TEST_CASE("which craft would be the better is answered, whatever else is said of a loom") {
    for (const auto* idea :
         {"Knitted or woven scarf? I've got a loom", "a scarf, knit or weave?"}) {
        CAPTURE(idea);
        const auto said = heard(idea);
        CHECK(holds(said, "Of the two crafts the"));
        CHECK(holds(said, "oven it would take") != holds(said, "nitted it would take"));
    }
}

TEST_CASE("a fabric that is not the one reckoned is said first") {
    const auto said = heard("log cabin blanket in garter");
    CHECK(holds(said, "I have no figures for log cabin"));
    CHECK_FALSE(holds(heard("blanket in garter"), "I have no figures"));
}

TEST_CASE("an idea that is sent again is answered alike, whatever was asked between") {
    const auto q = asked::heron();
    Answerer answerer(ground_of(q));
    const auto said = [&](const std::string& idea, const std::string& who) {
        Suggestion s;
        s.idea = idea;
        s.who = who;
        return reply(s, answerer.answer(s), q.yarn, q.units);
    };
    for (const auto* idea : ideas) {
        CAPTURE(idea);
        const auto alone = said(idea, "");
        const auto baby = said(idea, "baby");
        // What a column adds to an idea is not kept with its words.
        CHECK(said(idea, "") == alone);
        CHECK(said(idea, "baby") == baby);
        CHECK(heard(idea) == alone);
    }
    CHECK(said("a hat", "baby") != said("a hat", ""));
}

TEST_CASE("of several of one kind with a size the size is said") {
    CHECK(holds(heard("6 coasters, 4 inch square"), "6 woven mug mats (4.0 in a side)"));
    CHECK(holds(heard("10 scarves 150 cm long"), "10 knitted scarves of 150 cm"));
    CHECK_FALSE(holds(heard("10 hats"), "10 knitted hats ("));
}
