// What the table of fibres says of a fibre as it is spun.
#include <doctest/doctest.h>

#include "catalog/reference/catalogue.hpp"
#include "catalog/reference/tables.hpp"
#include "catalog/text/file.hpp"

using namespace gristwright;

namespace {

FibrePart named(const char* name) {
    static const auto tables = catalog::built_in();
    const auto* found = tables.fibre_named(name);
    REQUIRE_MESSAGE(found, name);
    return *found;
}

double softness(const FibrePart& fibre) {
    const auto& level = fibre.behaviour.levels[static_cast<std::size_t>(Behaviour::softness)];
    REQUIRE(level);
    return level->high;
}

}  // namespace

TEST_CASE("bast fibres are as harsh as the strands that are spun, not as fine as their cells") {
    for (const char* bast : {"Jute", "Flax", "Hemp"}) {
        CAPTURE(bast);
        CHECK(softness(named(bast)) < softness(named("Merino")) / 2);
        CHECK(named(bast).staple_low > millimetres(50));
    }
}

TEST_CASE("densities are of fibre as it lies in a room, and hollow hair is lighter than wool") {
    CHECK(in_grams_per_cm3(named("Viscose rayon staple").density) == doctest::Approx(1.49));
    CHECK(in_grams_per_cm3(named("Angora rabbit").density) < 1.2);
    CHECK(in_grams_per_cm3(named("Merino").density) == doctest::Approx(1.31));
}

TEST_CASE("a level from 0 to 1 stands on no page, so none is marked as read there") {
    const auto text = catalog::read_file(ROOT_DIR "/catalog/tables/fibres.csv");
    CHECK(catalog::read_fibres(text, "fibres.csv").size() > 90);
    auto claimed = text;
    claimed.replace(claimed.find("0.22,derived"), 12, "0.22,read");
    CHECK_THROWS_WITH(catalog::read_fibres(claimed, "fibres.csv"),
                      doctest::Contains("no page has levels from 0 to 1"));
    auto downwards = text;
    downwards.replace(downwards.find("0.22,derived"), 12, "0.22-0.18,derived");
    CHECK_THROWS_WITH(catalog::read_fibres(downwards, "fibres.csv"),
                      doctest::Contains("'0.22-0.18' runs downwards"));
}
