// When a caution is said.
#include "engine/caution/caution.hpp"

#include <doctest/doctest.h>

using namespace gristwright;

TEST_CASE("a caution holds under its condition") {
    const Facts facts{"knitted", "scarf", "felts", "says:pin"};
    for (const char* when : {"", "scarf", "knitted scarf", "cowl|scarf", "cowl|scarf felts",
                             "!woven", "says:pin|says:wire", "woven|!cowl scarf"})
        CHECK(holds(when, facts));
    for (const char* when : {"woven", "knitted woven", "cowl|hat", "!scarf", "scarf !felts", "pin"})
        CHECK_FALSE(holds(when, facts));
}

TEST_CASE("what felts and what melts is told from the fibre") {
    const auto facts_of = [](const char* name, const char* kind, const char* category) {
        Batch batch;
        FibrePart part;
        part.name = name, part.kind = kind, part.category = category;
        batch.fibre = {part};
        Facts out;
        add_facts(batch, out);
        return out;
    };
    const auto has = [](const Facts& facts, const char* word) { return facts.count(word) == 1; };
    CHECK(has(facts_of("Corriedale", "sheep", "medium"), "felts"));
    CHECK(has(facts_of("own wool", "", ""), "felts"));
    CHECK_FALSE(has(facts_of("Superwash Merino", "sheep", "fine"), "felts"));
    CHECK_FALSE(has(facts_of("Flax", "plant", "bast"), "felts"));  // linen was told it felts
    CHECK(has(facts_of("Flax", "plant", "bast"), "plant"));
    CHECK_FALSE(has(facts_of("Silk", "silk", "silk"), "felts"));
    CHECK(has(facts_of("Nylon", "man-made", "synthetic"), "melts"));
    Facts unknown;
    add_facts(Batch{}, unknown);
    CHECK(has(unknown, "felts"));
}

TEST_CASE("words of a text are facts, in small letters and without a plural s") {
    Facts facts;
    add_words("Count PINS; a baby's hat.", facts);
    for (const char* word : {"says:count", "says:pin", "says:baby", "says:hat"})
        CHECK(facts.count(word) == 1);
}
