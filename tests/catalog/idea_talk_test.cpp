// What is talk though it names a thing, and what is a wish though it tells a tale; whose a thing
// is; what is refused; what is there already (tests/cases/talk_and_wishes.csv has more of each).
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>

#include "engine/suggestion/understand.hpp"
#include "tests/cases.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

using Reader = catalog::IdeaReader;

constexpr const char* things[] = {"hat", "scarf", "bag", "blanket", "cardigan", "cushion"};

std::string filled(std::string frame, const std::string& thing) {
    const auto at = frame.find('*');
    return frame.replace(at, 1, thing);
}

// "hat+scarf" in the order of letters; "talk", "nothing".
std::string things_of(const Taken& taken) {
    if (taken.not_an_idea) return "talk";
    std::vector<std::string> kinds;
    for (const auto& wanted : taken.wanted) kinds.push_back(wanted.kind);
    std::sort(kinds.begin(), kinds.end());
    std::string out;
    for (const auto& kind : kinds) out += (out.empty() ? "" : "+") + kind;
    return out.empty() ? "nothing" : out;
}

std::string sorted_kinds(const std::string& joined) {
    std::vector<std::string> kinds(1);
    for (const char c : joined)
        if (c == '+')
            kinds.emplace_back();
        else
            kinds.back() += c;
    std::sort(kinds.begin(), kinds.end());
    std::string out;
    for (const auto& kind : kinds) out += (out.empty() ? "" : "+") + kind;
    return out;
}

}  // namespace

TEST_CASE("talk and wishes, row by row") {
    Reader reader;
    for (const auto& row : read_cases("talk_and_wishes.csv")) {
        CAPTURE(row.at("text"));
        const auto taken = reader.read(row.at("text"));
        CHECK(things_of(taken) == sorted_kinds(row.at("things")));
        if (!row.at("for").empty()) CHECK(words(taken.wearer) == row.at("for"));
    }
}

TEST_CASE("a thing somebody has, lost or made is talk, whichever thing it is") {
    Reader reader;
    for (const std::string frame :
         {"My late husband wore the one * for forty years.", "You've dropped your *, love",
          "whoever left a red * on the coat rack, it's at the desk", "please move her *",
          "There's a green * on the radiator", "My first * took four years",
          "The dog ate a whole * last winter", "Mind your *, it's in the way",
          "somebody's * is on the floor", "Found: one *, by the door",
          "Visit my shop for a handmade *, free delivery"})
        for (const std::string thing : things) {
            CAPTURE(filled(frame, thing));
            CHECK(reader.read(filled(frame, thing)).not_an_idea);
        }
}

TEST_CASE("a tale that ends in a wish is an idea, whichever thing it is") {
    Reader reader;
    for (const std::string frame :
         {"make the * your mother wore", "I knitted one in something like it, so a * it is",
          "A *. My mother wore hers for forty years.", "My brother lost his, he needs a *",
          "There's a * in that", "whoever wins the raffle gets a * of it", "You need a new *",
          "You wore a lovely * last week, do another"})
        for (const std::string thing : things) {
            CAPTURE(filled(frame, thing));
            CHECK(things_of(reader.read(filled(frame, thing))) == thing);
        }
}

TEST_CASE(
    "a son is as old as he is said to be, a grandson small unless he is said to be grown up") {
    Reader reader;
    for (const std::string who : {"son", "nephew", "niece", "granddaughter", "grandson"}) {
        CAPTURE(who);
        const auto unsaid = reader.read("a hat for my " + who);
        CHECK((unsaid.kin == who) == (unsaid.wearer == Wearer::unsaid));
        CHECK((unsaid.wearer == Wearer::child) == who.starts_with("grand"));
        for (const std::string small : {" (7)", ", she's 6", " aged 4", ", he is 8"}) {
            CAPTURE(small);
            const auto taken = reader.read("a hat for my " + who + small);
            CHECK(taken.wearer == Wearer::child);
            CHECK(taken.years.has_value());
            CHECK(taken.kin.empty());
        }
        for (const std::string grown :
             {"at uni", "in the navy", "who's 34", ", he is bigger than me", "'s teacher"}) {
            CAPTURE(grown);
            const auto gap = grown[0] == '\'' || grown[0] == ',' ? "" : " ";
            CHECK(reader.read("a hat for my " + who + gap + grown).wearer == Wearer::adult);
        }
    }
    CHECK(reader.read("a hat for my baby brother").wearer == Wearer::baby);
    CHECK(reader.read("a hat for my niece and mittens for my nephew at uni").wanted.size() == 2);
}

TEST_CASE("what is turned down behind its name is not made") {
    Reader reader;
    for (const std::string frame :
         {"*? No. A vest", "*? Nope. Vest", "*: no. Vest: yes", "Over my dead body a *. A vest",
          "A * is too obvious. A vest", "A vest over a * any day", "Less *, more vest"})
        for (const std::string thing : things) {
            CAPTURE(filled(frame, thing));
            CHECK(things_of(reader.read(filled(frame, thing))) == "vest");
        }
    CHECK(things_of(reader.read("A hat? No idea. A hat")) == "hat");
    CHECK(things_of(reader.read("I wouldn't say no to a hat")) == "hat");
    CHECK(reader.read("Bulky? No way. A hat").weight.empty());
}

TEST_CASE("what it is worn with or washed with is there already") {
    Reader reader;
    for (const std::string frame :
         {"to wear with my *", "to go under a *", ", matches my *", "that goes with her *"})
        for (const std::string thing : things) {
            CAPTURE(filled(frame, thing));
            CHECK(things_of(reader.read("a vest " + filled(frame, thing))) == "vest");
        }
    CHECK(things_of(reader.read("a vest to match, and a hat")) == "hat+vest");
    CHECK(things_of(reader.read("a cotton wrap, this as weft, a scarf")) == "scarf");
    CHECK(things_of(reader.read("a cotton wrap")) == "wrap");
    CHECK(things_of(reader.read("13 wraps to the inch, a hat")) == "hat");
}

TEST_CASE("a letter that goes on is no word of its own") {
    Reader reader;
    CHECK(reader.read("ooooooh that colour").not_an_idea);
    CHECK(things_of(reader.read("a haaaat")) == "hat");
    CHECK(reader.read("following!").not_an_idea);
}

TEST_CASE("a wish is no talk for a word that is often told with") {
    Reader reader;
    // Each has a verb of the past, an owner or a place, and wishes all the same.
    const std::pair<std::string, std::string> wishes[] = {
        {"A scarf for the lady who lost hers", "scarf"},
        {"My son needs socks, he lost the old ones", "socks"},
        {"a blanket for the bed my grandfather built", "blanket"},
        {"would it felt if I washed a hat?", "hat"},
        {"a jumper for a terrier called Bert", "pullover"},
        {"a shawl worked in rib, with the edge knitted double", "shawl"},
        {"Gran's beret took 2 oz of four ply and it fits, have that", "hat"},
        {"Somebody should make mittens from it", "mittens"},
        {"Bring on the scarves", "scarf"},
        {"the church wants a new runner", "runner"},
        {"There's a hat in that skein", "hat"},
        {"a bag to put my needles in", "bag"},
    };
    for (const auto& [text, thing] : wishes) {
        CAPTURE(text);
        const auto taken = reader.read(text);
        CHECK_FALSE(taken.not_an_idea);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().kind == thing);
    }
}

TEST_CASE("a story goes on until a sentence wishes") {
    Reader reader;
    const std::string story =
        "That reminds me of the year our branch wrapped the bandstand. "
        "Forty metres of bunting, three blankets, and the council sent us "
        "a bill for it. Never again.";
    CHECK(reader.read(story).not_an_idea);
    CHECK(things_of(reader.read(story + " I'd make a hat.")) == "hat");
    CHECK(things_of(reader.read(story + " A hat would do.")) == "hat");
    CHECK(things_of(reader.read("A hat. " + story)) == "hat");
    CHECK(reader.read("I knitted the elbows every spring, then the cuffs, then the hat.")
              .not_an_idea);
}

TEST_CASE("a doll's owner, a child's teacher: whose word stands last") {
    Reader reader;
    for (const std::string who : {"my child's teacher", "the baby's father", "the nursery nurse",
                                  "the kid's hockey coach", "my daughter's boyfriend"}) {
        CAPTURE(who);
        CHECK(reader.read("a hat for " + who).wearer == Wearer::adult);
    }
    CHECK(reader.read("a hat for my daughter's doll").wearer != Wearer::child);
    // Two people, and no owner: the one that calls for more care.
    CHECK(reader.read("a hat for the baby and her father").wearer == Wearer::baby);
    CHECK(reader.read("a hat for my baby sister").wearer == Wearer::baby);
}

TEST_CASE("feet of a person are no feet of the piece") {
    Reader reader;
    const auto tall = reader.read("a scarf for my six foot son");
    REQUIRE(tall.wanted.size() == 1);
    CHECK(tall.wanted.front().sizes.empty());
    CHECK(tall.wearer == Wearer::adult);
    const auto longer = reader.read("a six foot scarf for my son");
    REQUIRE(longer.wanted.size() == 1);
    CHECK(longer.wanted.front().sizes.size() == 1);
    CHECK(longer.kin == "son");
}

TEST_CASE("two negations wish") {
    Reader reader;
    for (const std::string frame :
         {"I can't say no to a *", "I wouldn't say no to a *", "nobody would say no to a *",
          "you can't beat a *", "there's no harm in a *", "won't somebody make a *"})
        for (const std::string thing : things) {
            CAPTURE(filled(frame, thing));
            const auto taken = reader.read(filled(frame, thing));
            CHECK(things_of(taken) == thing);
            CHECK(taken.ruled_out.empty());
        }
}

TEST_CASE("notices, adverts and cries are talk") {
    Reader reader;
    const std::string talk[] = {
        "The tea urn wants filling if anybody's near it",
        "Subs are due, twelve pounds, see me at the back",
        "Next month is natural dyes, bring an apron and a jar",
        "Sorry I'm late, the cat got in the bag",
        "Speak up dear, we can't hear you",
        "could somebody recap, I missed the first half",
        "can someone open a window",
        "the hall has to be locked by ten",
        "I sell ready made blankets, message me",
        "Sign up to my newsletter for a free hat pattern",
        "Hand knitted socks for sale, cash only",
        "New pattern release: the Harbour cowl, half price until Sunday",
        "oooooh",
        "drooling",
        "bookmarking this",
        "look at that sheen",
        "well I never",
        "I'd put it on the mantel and pet it once a day",
        "no idea, sorry, I only came for the cake",
    };
    for (const auto& text : talk) {
        CAPTURE(text);
        CHECK(reader.read(text).not_an_idea);
    }
}

TEST_CASE("one for me and one for you are two") {
    Reader reader;
    for (const std::string thing : things) {
        CAPTURE(thing);
        const auto a = "a " + thing;
        const auto three = reader.read(a + " for me, " + a + " for you, " + a + " for the rector");
        REQUIRE(three.wanted.size() == 1);
        CHECK(three.wanted.front().count == 3);
        // Named again, and still one.
        const auto one = reader.read(a + " for me. I'd love " + a);
        REQUIRE(one.wanted.size() == 1);
        CHECK(one.wanted.front().count == 1);
    }
}

TEST_CASE("what somebody has already, or knows, is not made beside what is wanted") {
    Reader reader;
    for (const std::string frame :
         {"got a * in this colour already, so gloves for me", "she already has two *s. Gloves!",
          "I own eleven *s, gloves please", "Gloves! And she has a *.",
          "I know *s and I know gloves, so gloves", "Gloves, and I've already got the *"})
        for (const std::string thing : {"hat", "scarf", "shawl"}) {
            CAPTURE(filled(frame, thing));
            CHECK(things_of(reader.read(filled(frame, thing))) == "gloves");
        }
    // What somebody lacks is wanted.
    for (const std::string frame : {"she has no *, make a *", "he's got no *, poor man"})
        for (const std::string thing : {"hat", "scarf", "shawl"})
            CHECK(things_of(reader.read(filled(frame, thing))) == thing);
    CHECK(things_of(reader.read("no scarf please, a hat")) == "hat");
}

TEST_CASE("of two that somebody wavers between neither is ruled out") {
    Reader reader;
    for (const std::string idea :
         {"I can't choose between a hat and a cowl", "can't decide: a hat or a cowl",
          "couldn't pick between a hat and a cowl"}) {
        CAPTURE(idea);
        const auto taken = reader.read(idea);
        CHECK(taken.wanted.size() == 2);
        CHECK(taken.ruled_out.empty());
    }
}

TEST_CASE("what would never be made of it is ruled out, however far behind") {
    Reader reader;
    for (const std::string idea :
         {"I'd never put a two ply this soft in the reed for towels, make a shawl",
          "would never use a yarn so soft for towels. A shawl"}) {
        CAPTURE(idea);
        CHECK(things_of(reader.read(idea)) == "shawl");
        CHECK(reader.read(idea).ruled_out == std::vector<std::string>{"towel"});
    }
}

TEST_CASE("an animal wears what is for it, and only walks along elsewhere") {
    Reader reader;
    for (const auto* worn : {"a hat for the dog", "the dog needs a hat", "a dog hat"}) {
        CAPTURE(worn);
        CHECK(reader.read(worn).wearer == Wearer::animal);
    }
    for (const auto* there : {"a cowl for when you're out with the dog", "a cowl for dog walks",
                              "a cowl, I've got a dog", "a cowl to walk the dog in"}) {
        CAPTURE(there);
        CHECK(reader.read(there).wearer != Wearer::animal);
    }
}

TEST_CASE("each of several people has one where it is said to go round") {
    Reader reader;
    const auto count = [&](const std::string& idea) {
        const auto taken = reader.read(idea);
        return taken.wanted.empty() ? 0 : taken.wanted.front().count;
    };
    CHECK(count("Six grandchildren. Mittens all round.") == 6);
    CHECK(count("four nephews, hats for all") == 4);
    CHECK(count("hats for my three nieces") == 3);
    CHECK(count("mittens for the twins") == 2);
    CHECK(count("a blanket for two kids") == 1);
    CHECK(count("Four of us said a hat") == 1);
    // Ages are no count, and a range of them is nobody's own.
    CHECK(count("cardigan, ages 2 to 11") == 1);
    CHECK(reader.read("mittens, ages 2 to 11, cold hands").wanted.size() == 1);
}

TEST_CASE("a verb that stands behind 'a' is the thing of that name") {
    Reader reader;
    CHECK(things_of(reader.read("could you get a throw out of it?")) == "blanket");
    CHECK(things_of(reader.read("spin more for a throw out on the terrace")) == "blanket");
    CHECK(reader.read("throw out the plan").not_an_idea);
}

TEST_CASE("what somebody has only in mind is wanted, with what is beside it") {
    Reader reader;
    for (const std::string frame :
         {"I have two *s to make and gloves", "got two *s to knit, plus gloves",
          "I'd love to have two *s and gloves", "I want to own two *s and gloves",
          "I know a * would be lovely, but gloves too", "gloves, we have a * in the plan too"})
        for (const std::string thing : {"hat", "shawl", "cowl"}) {
            CAPTURE(filled(frame, thing));
            const auto taken = reader.read(filled(frame, thing));
            CHECK(taken.wanted.size() == 2);
            CHECK(taken.aside.empty());
        }
}

TEST_CASE("pieces that are joined to a thing are its form and not a thing") {
    Reader reader;
    CHECK(things_of(reader.read("How many panels would I sew together to get a throw?")) ==
          "blanket");
    CHECK(things_of(reader.read("three panels, and a throw")) == "blanket+panel");
}

TEST_CASE("what heads a sentence is wanted, whatever is told of the one that it is likened to") {
    Reader reader;
    for (const std::string frame :
         {"a * like my nan's, she used silk", "a * as my aunt had, she made it from dk",
          "A woven * as long as I am tall", "A * as wide as me", "A knitted * like hers"})
        for (const std::string thing : {"shawl", "scarf", "blanket"}) {
            CAPTURE(filled(frame, thing));
            CHECK(things_of(reader.read(filled(frame, thing))) == thing);
        }
    // What is likened in a tale is none.
    for (const std::string told :
         {"my hat is like gran's, she knitted it in wool",
          "That scarf was like hers, she used silk", "I lost a hat like my nan's, she laughed"}) {
        CAPTURE(told);
        CHECK(reader.read(told).not_an_idea);
    }
}

TEST_CASE("what is asked and answered with no is not taken") {
    Reader reader;
    for (const char* refused : {"Two-tone? No.", "striped with a second colour? no thanks."})
        for (const std::string thing : {"hat", "scarf"}) {
            const auto taken = reader.read(fmt::format("{} A {}.", refused, thing));
            CAPTURE(refused);
            CHECK(things_of(taken) == thing);
            CHECK(taken.role == YarnRole::unsaid);
        }
    CHECK(things_of(reader.read("Socks? No. A hat.")) == "hat");
}

TEST_CASE("no wider than so much is a width, no longer than so much a length") {
    Reader reader;
    for (const std::string words : {"no wider than", "not wider than", "no broader than"}) {
        CAPTURE(words);
        const auto taken = reader.read("a runner " + words + " 14 inches");
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().only_width);
    }
    const auto taken = reader.read("a runner no longer than 44 inches");
    REQUIRE(taken.wanted.size() == 1);
    CHECK(taken.wanted.front().sizes.size() == 1);
    CHECK_FALSE(taken.wanted.front().only_width);
}

TEST_CASE("however it is wished for, the thing is taken, and the craft where one is said") {
    Reader reader;
    for (const auto& row : read_cases("wishes.csv"))
        for (const std::string thing : {"hat", "scarf", "blanket"}) {
            const auto said = filled(row.at("frame"), thing);
            CAPTURE(said);
            const auto at = said.find("{craft}");
            if (at == std::string::npos) {
                CHECK(things_of(reader.read(said)) == thing);
                continue;
            }
            const auto by = [&](const char* verb) {
                return reader.read(std::string(said).replace(at, 7, verb));
            };
            CHECK(things_of(by("make")) == thing);
            CHECK(things_of(by("knit")) == thing);
            CHECK(by("knit").craft == Craft::knitted);
            CHECK(by("weave").craft == Craft::woven);
        }
}
