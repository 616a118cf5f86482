// What this yarn is to be in the piece: each role by many ways of saying it, and what is near it
// and is none.
#include <doctest/doctest.h>

#include "engine/suggestion/understand.hpp"
#include "tests/catalog/carried.hpp"

using namespace gristwright;

namespace {

struct Said {
    YarnRole role;
    const char* idea;
};

// Near a role.
constexpr const char* of_none[] = {
    "a hat for the last day of term",
    "a scarf as soon as you can get to it",
    "a shawl, I have nothing to do till it's Monday",
    "a hat with a red brim",
    "a blanket for the boiler room",
    "a cushion for two together on the sofa",
    "a pullover with a cable up the front",
    "a hat and a scarf in your yarn",
};

}  // namespace

TEST_CASE("a role is taken by whatever says it, and the role of this yarn goes before another's") {
    using enum YarnRole;
    constexpr Said all_said[] = {
        {weft_only, "Put a stronger yarn on for warp and beat this in as weft. Table runner"},
        {weft_only, "a rug over a linen warp"},
        {weft_only, "a throw warped in cotton"},
        {weft_only, "a scarf with this as weft"},
        {weft_only, "tea towels, something stronger for the warp"},
        {weft_only, "a bag on a hemp warp"},
        {warp_only, "warp for a stole, with the fine silk out of the cupboard as weft"},
        {warp_only, "a scarf with this as warp and a finer weft"},
        {warp_only, "a scarf with a mohair weft"},
        {warp_only, "a shawl, yours as the warp"},
        {doubled, "a hat, hold two together"},
        {doubled, "a cushion, hold it with itself"},
        {doubled, "a hat knit with both ends of the ball"},
        {doubled, "slippers, work it double"},
        {doubled, "a rug with two strands at once"},
        {plied_again, "ply it back on itself till it's like rope, then a belt"},
        {plied_again, "chain ply it and knit socks"},
        {plied_again, "run it through the wheel again for socks"},
        {plied_again, "mittens, but add a third ply"},
        {plied_again, "ply two of the skeins together for a vest"},
        {fulled, "a bag knitted huge and thrown in the hot wash on purpose, then felted"},
        {fulled, "a hat, milled in the bath"},
        {fulled, "run it through the machine until it felts, then a hat"},
        {fulled, "slippers, then into the washer"},
        {with_another, "a scarf, two rows of this two rows of the blue one"},
        {with_another, "pullover, yoke in this and the body in something from the mill"},
        {with_another, "mitts, pattern in this on a white background"},
        {with_another, "a cowl held alongside some silk"},
        {with_another, "a blanket with oddments of whatever is there"},
        {border, "use it to edge a blanket"},
        {border, "only for the trim of a cardigan"},
        {all, "a shawl as big as the yarn allows"},
        {all, "a cowl till there's none left"},
        {all, "a rug using up the entire batch"},
        {all, "a scarf until the last inch is gone"},
        {all, "scarf down to the last scrap"},
    };
    catalog::IdeaReader reader;
    for (const auto& [role, idea] : all_said) {
        CAPTURE(std::string(idea));
        CHECK(words(reader.read(idea).role) == words(role));
    }
}

TEST_CASE("what only sounds like a role is none") {
    catalog::IdeaReader reader;
    for (const auto* idea : of_none) {
        CAPTURE(std::string(idea));
        CHECK(words(reader.read(idea).role).empty());
    }
}

TEST_CASE(
    "a fabric in more than one colour shares its work with another yarn, unless that is refused") {
    catalog::IdeaReader reader;
    const auto role = [&](const std::string& idea) { return reader.read(idea).role; };
    for (const std::string fabric : {"fair isle", "stranded", "intarsia"})
        for (const std::string thing : {"pullover", "hat", "mittens"}) {
            CAPTURE(fabric);
            CAPTURE(thing);
            CHECK(role(fabric + " " + thing) == YarnRole::with_another);
            CHECK(role(thing + " in " + fabric) == YarnRole::with_another);
            CHECK(role(fabric + "? No. " + thing) == YarnRole::unsaid);
            CHECK(role(thing + ", no " + fabric) == YarnRole::unsaid);
        }
    for (const std::string plain : {"garter hat", "ribbed mittens", "a cabled pullover"}) {
        CAPTURE(plain);
        CHECK(role(plain) == YarnRole::unsaid);
    }
}

TEST_CASE("what warms the ears is a headband, by whichever of its names") {
    catalog::IdeaReader reader;
    for (const std::string name : {"ear warmer", "ear-warmer", "ear warmers", "ear-warmer band",
                                   "an ear warmer band for under a helmet"}) {
        CAPTURE(name);
        const auto taken = reader.read(name);
        REQUIRE(taken.wanted.size() == 1);
        CHECK(taken.wanted.front().kind == "headband");
        CHECK(taken.left_out.empty());
    }
    CHECK(reader.read("a warp-faced band").wanted.front().kind == "band");
}
