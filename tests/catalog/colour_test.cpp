// Colours of a yarn as people write them.
#include <doctest/doctest.h>

#include "catalog/reference/catalogue.hpp"
#include "catalog/typed/batch_text.hpp"
#include "catalog/typed/colour_reading.hpp"
#include "engine/units/failure.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::catalog;

namespace {

const Catalogue& catalogue() {
    static const auto all = built_in();
    return all;
}

MeasuredBatch batch(const std::string& more) {
    return interpret(
        read_batch_toml(more + "\n[[skein]]\nlength = \"171m\"\nmass = \"38.5g\"\n", "b.toml"),
        catalogue());
}

std::string refused(const std::string& more) {
    try {
        batch(more);
    } catch (const Refused& error) {
        return error.what();
    }
    return "";
}

}  // namespace

TEST_CASE("a colour is a name or red, green and blue, the table's names are colours, each once") {
    const auto& spoken = catalogue().spoken;
    CHECK(spoken.words("colour").size() > 40);
    for (const auto& word : spoken.words("colour")) {
        const auto read = read_colours(word, spoken);
        REQUIRE(read.size() == 1);
        CHECK(hexadecimal(read[0]) == spoken.find("colour", word)->means);
    }
    const auto two = read_colours("#48c, #4488CC", spoken);
    REQUIRE(two.size() == 2);
    CHECK(hexadecimal(two[0]) == "#4488cc");
    CHECK(two[0].red == near(68 / 255.0, 1e-12));
    CHECK(hexadecimal(two[1]) == hexadecimal(two[0]));
    CHECK(read_colours("Dark Brown", spoken).size() == 1);
}

TEST_CASE("a batch may have no colour, one, or several that follow each other along the yarn") {
    CHECK(batch("").colours.empty());
    CHECK_FALSE(batch("colour = \"teal\"").batch.variegated);
    CHECK(batch("colour = \"teal\"").colours.size() == 1);
    const auto several = batch("colour = [\"teal\", \"grey\"]");
    CHECK(several.colours.size() == 2);
    CHECK(several.batch.variegated);
    CHECK(several.notes.size() == 1);
    CHECK_FALSE(batch("colour = [\"teal\", \"grey\"]\nvariegated = false").batch.variegated);
}

TEST_CASE("what is no colour is refused with its place and what would be right") {
    for (const char* wrong : {"tael", "#12", "#12345g", "#", "teal,", "rgb(1,2,3)"}) {
        const auto said = refused(std::string("colour = \"") + wrong + "\"");
        INFO(std::string(wrong), " ", said);
        CHECK(said.find("b.toml:1: colour") != std::string::npos);
        CHECK(said.find("#4a8c8c") != std::string::npos);
    }
    CHECK(refused("colour = \"tael\"").find("did you mean 'teal'") != std::string::npos);
}
