// When a caution is said.
#include <doctest/doctest.h>

#include "engine/caution/cautions.hpp"
#include "engine/units/failure.hpp"

using namespace gristwright;

namespace {

Cautions table_of(const std::vector<std::string>& conditions) {
    std::vector<Caution> rows;
    for (const auto& when : conditions) rows.push_back({when, "mind: " + when, "", true, {}, ""});
    return Cautions(std::make_shared<const std::vector<Caution>>(std::move(rows)));
}

Facts facts_of_fibre(const char* name, const char* kind, const char* category) {
    Batch batch;
    FibrePart part;
    part.name = name, part.kind = kind, part.category = category;
    batch.fibre = {part};
    Facts out;
    take_facts(batch, [&](std::string_view fact) { out.emplace(fact); });
    return out;
}

}  // namespace

TEST_CASE("a caution holds under its condition") {
    const auto holds = [](const std::string& when) {
        const auto cautions = table_of({when});
        Cautions::Known known;
        for (const char* fact : {"knitted", "scarf", "felts"}) cautions.add_fact(fact, known);
        cautions.add_words("Pins", known);
        return cautions.holding({known}).size() == 1;
    };
    for (const char* when : {"", "scarf", "knitted scarf", "cowl|scarf", "cowl|scarf felts",
                             "!woven", "says:pin|says:wire", "woven|!cowl scarf"})
        CHECK(holds(when));
    for (const char* when : {"woven", "knitted woven", "cowl|hat", "!scarf", "scarf !felts", "pin"})
        CHECK_FALSE(holds(when));
}

TEST_CASE("what holds for any of several works is said once, in the table's order") {
    const auto cautions = table_of({"hat", "!hat", "cowl says:hat", "skein"});
    std::vector<Cautions::Known> works(2);
    cautions.add_fact("hat", works[0]);
    cautions.add_fact("cowl", works[1]);
    cautions.add_words("under a HAT", works[1]);
    std::vector<std::string> said;
    for (const auto& caution : cautions.holding(works)) said.push_back(caution.when);
    CHECK(said == std::vector<std::string>{"hat", "!hat", "cowl says:hat"});
}

TEST_CASE("a table that asks for more facts than there are bits is our mistake") {
    std::string many;
    for (std::size_t i = 0; i <= Cautions::most_facts; ++i)
        many += "fact" + std::to_string(i) + "|";
    CHECK_THROWS_AS(table_of({many}), OurMistake);
}

TEST_CASE("what felts and what melts is told from the fibre") {
    CHECK(facts_of_fibre("Corriedale", "sheep", "medium").contains("felts"));
    CHECK(facts_of_fibre("own wool", "", "").contains("felts"));
    CHECK_FALSE(facts_of_fibre("Superwash Merino", "sheep", "fine").contains("felts"));
    CHECK_FALSE(facts_of_fibre("Flax", "plant", "bast").contains("felts"));  // linen was told so
    CHECK(facts_of_fibre("Flax", "plant", "bast").contains("plant"));
    CHECK_FALSE(facts_of_fibre("Silk", "silk", "silk").contains("felts"));
    CHECK(facts_of_fibre("Nylon", "man-made", "synthetic").contains("melts"));
    Facts unknown;
    take_facts(Batch{}, [&](std::string_view fact) { unknown.emplace(fact); });
    CHECK(unknown == Facts{"felts"});
}

TEST_CASE("words of a text are facts, in small letters and without a plural s") {
    std::vector<std::string> words;
    take_words("Count PINS; a baby's hat.",
               [&](std::string_view word) { words.emplace_back(word); });
    CHECK(words == std::vector<std::string>{"count", "pin", "a", "baby", "s", "hat"});
}
