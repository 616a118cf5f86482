#include "engine/yarn/kinds.hpp"

#include <doctest/doctest.h>

#include "engine/yarn/constants.hpp"
#include "engine/yarn/profile.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using Places = std::vector<std::size_t>;
using Yarns = std::vector<Places>;

namespace {

Skein skein(const char* name, double metres_of, double grams_of) {
    Skein out;
    out.name = name;
    out.length = metres(metres_of);
    out.mass = grams(grams_of);
    out.state = LengthState::washed;
    return out;
}

FibrePart fibre(const char* name, double share = 1) {
    FibrePart out;
    out.name = name;
    out.share = share;
    return out;
}

WrapsReading wraps(double wpi) { return {wraps_per_inch(wpi), inches(1.0), WrapsHow::laid}; }

Yarns yarns_of(const Batch& batch) { return profile(batch, {}).agreement.yarns; }

}  // namespace

TEST_CASE("skeins of one grist are two yarns by their fibre, or by their colour") {
    Batch batch;
    batch.skeins = {skein("A", 200, 50), skein("B", 200, 50), skein("C", 200, 50)};
    CHECK(yarns_of(batch) == Yarns{{0, 1, 2}});
    batch.skeins[0].colour = batch.skeins[2].colour = "teal";
    batch.skeins[1].colour = "grey";
    CHECK(yarns_of(batch) == Yarns{{0, 2}, {1}});
    CHECK(profile(batch, {}).agreement.answer == SameYarn::differ);
    CHECK(profile(batch, {}).agreement.of_several_kinds);
    batch.skeins[1].colour = "teal";
    batch.skeins[1].fibre = {fibre("Merino")};
    batch.skeins[0].fibre = batch.skeins[2].fibre = {fibre("Merino", 0.7), fibre("Silk", 0.3)};
    CHECK(yarns_of(batch) == Yarns{{0, 2}, {1}});
    // The same blend said the other way round is the same.
    batch.skeins[2].fibre = {fibre("Silk", 0.3), fibre("Merino", 0.7)};
    CHECK(kinds_of(batch.skeins) == Places{0, 1, 0});
}

TEST_CASE("wraps part skeins where neighbours leave a gap, not where they creep") {
    Batch batch;
    const double bound = constants::alike_wraps;
    for (const double wpi : {12.0, 12.0 * bound * 0.99, 12.0 * bound * bound * 0.97}) {
        batch.skeins.push_back(skein("x", 200, 50));
        batch.skeins.back().wraps = wraps(wpi);
    }
    CHECK(kinds_of(batch.skeins) == Places{0, 0, 0});
    batch.skeins[1].wraps = wraps(12);
    CHECK(kinds_of(batch.skeins) == Places{0, 0, 1});
}

TEST_CASE("each kind is parted by its grist besides, the first skein given comes first") {
    Batch batch;
    batch.skeins = {skein("A", 100, 40), skein("B", 200, 40), skein("C", 110, 40),
                    skein("D", 104, 40)};
    for (const auto s : {0, 1, 3}) batch.skeins[std::size_t(s)].colour = "teal";
    batch.skeins[2].colour = "grey";
    CHECK(yarns_of(batch) == Yarns{{0, 3}, {1}, {2}});
}

TEST_CASE("the batch of some skeins is of what they say: their blend by mass, their mean wraps") {
    Batch batch;
    batch.wraps = wraps(20);
    batch.fibre = {fibre("Romney")};
    batch.skeins = {skein("A", 200, 30), skein("B", 200, 10), skein("C", 200, 40)};
    CHECK(with_skeins(batch, {0, 1}).fibre[0].name == "Romney");
    batch.skeins[0].fibre = {fibre("Merino")};
    batch.skeins[1].fibre = {fibre("Merino", 0.5), fibre("Silk", 0.5)};
    batch.skeins[2].fibre = {fibre("Alpaca")};
    batch.skeins[0].wraps = wraps(9);
    batch.skeins[1].wraps = wraps(16);
    const auto two = with_skeins(batch, {0, 1});
    REQUIRE(two.skeins.size() == 2);
    REQUIRE(two.fibre.size() == 2);
    CHECK(two.fibre[0].share == doctest::Approx(0.875));
    CHECK(two.fibre[1].share == doctest::Approx(0.125));
    CHECK(in_wraps_per_inch(two.wraps->count) == doctest::Approx(12));
    CHECK(in_wraps_per_inch(with_skeins(batch, {2}).wraps->count) == doctest::Approx(20));
    CHECK(as_its_skeins_say(batch).fibre.size() == 3);
}
