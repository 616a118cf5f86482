#include "engine/yarn/traits.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace gristwright;
using doctest::Approx;

namespace {

TraitRow row(TraitName trait, Driver driver, double from, double to, double adds) {
    TraitRow out;
    out.trait = trait, out.driver = driver;
    out.from = from, out.to = to, out.adds = adds;
    out.more = "much", out.less = "little";
    return out;
}

Drivers with(Driver which, double value) {
    Drivers out;
    out[static_cast<std::size_t>(Driver::base)] = 1;
    out[static_cast<std::size_t>(which)] = value;
    return out;
}

const std::vector<TraitRow> rows{row(TraitName::wear, Driver::base, 0, 1, 0.3),
                                 row(TraitName::wear, Driver::plies, 1, 3, 0.4),
                                 row(TraitName::softness, Driver::plies, 1, 3, -0.9)};

double wear(double plies) { return trait(TraitName::wear, with(Driver::plies, plies), rows).value; }

FibrePart fibre(const char* kind, const char* category, double low, double high) {
    FibrePart out;
    out.kind = kind, out.category = category;
    out.micron_low = microns(low), out.micron_high = microns(high);
    return out;
}

std::optional<double> driver(const Batch& batch, Driver which) {
    const auto known = drivers_of(batch, {}, {})[static_cast<std::size_t>(which)];
    return known ? std::optional(known->value) : std::nullopt;
}

}  // namespace

TEST_CASE("a row adds nothing at `from`, all at `to`, a share between and no more beyond") {
    CHECK(wear(1) == Approx(0.3));
    CHECK(wear(2) == Approx(0.5));
    CHECK(wear(3) == Approx(0.7));
    CHECK(wear(8) == Approx(0.7));
}

TEST_CASE("a row that runs downwards works the same way round") {
    const std::vector down{row(TraitName::wear, Driver::packing, 0.2, 0.1, 0.6)};
    CHECK(trait(TraitName::wear, with(Driver::packing, 0.05), down).value == Approx(0.6));
    CHECK(trait(TraitName::wear, with(Driver::packing, 0.15), down).value == Approx(0.3));
    CHECK(trait(TraitName::wear, with(Driver::packing, 0.30), down).value == Approx(0));
}

TEST_CASE("what is not known counts for half and widens the spread by its row over root twelve") {
    const auto known = trait(TraitName::wear, with(Driver::plies, 2), rows);
    const auto open = trait(TraitName::wear, with(Driver::base, 1), rows);
    CHECK(open.value == Approx(known.value));
    CHECK(open.spread * open.spread - known.spread * known.spread == Approx(0.4 * 0.4 / 12));
}

TEST_CASE("a trait stays between 0 and 1, whatever its rows add up to") {
    const std::vector much{row(TraitName::bloom, Driver::base, 0, 1, 3)};
    const std::vector little{row(TraitName::bloom, Driver::base, 0, 1, -3)};
    CHECK(trait(TraitName::bloom, with(Driver::base, 1), much).value == 1);
    CHECK(trait(TraitName::bloom, with(Driver::base, 1), little).value == 0);
    CHECK(trait(TraitName::bloom, {}, {}).value == 0);
}

TEST_CASE("reasons: only what is known and moves the trait, strongest first") {
    auto strong = row(TraitName::wear, Driver::combed, 0, 1, 0.6);
    auto weak = row(TraitName::wear, Driver::halo, 0, 1, 0.2);
    auto faint = row(TraitName::wear, Driver::spring, 0, 1, 0.02);
    auto unknown = row(TraitName::wear, Driver::staple, 50, 150, 0.9);
    strong.more = "combed", weak.less = "dull", faint.more = "crimpy", unknown.more = "long";
    Drivers d = with(Driver::combed, 1);
    d[static_cast<std::size_t>(Driver::halo)] = 0;
    d[static_cast<std::size_t>(Driver::spring)] = 1;
    CHECK(trait(TraitName::wear, d, {faint, weak, strong, unknown}).reasons ==
          std::vector<std::string>{"combed", "dull"});
}

TEST_CASE("every trait and driver is found by its own word") {
    for (std::size_t t = 0; t < trait_count; ++t)
        CHECK(trait_named(words(static_cast<TraitName>(t))) == static_cast<TraitName>(t));
    CHECK(driver_named("long draw") == Driver::long_draw);
    CHECK(driver_named("variegated") == Driver::variegated);
    CHECK_FALSE(trait_named("beauty"));
    CHECK_FALSE(driver_named(""));
}

TEST_CASE("a blend's diameter is the mean by mass, one part without its own leaves it open") {
    Batch batch;
    batch.fibre = {fibre("sheep", "fine", 18, 22), fibre("sheep", "longwool", 34, 38)};
    batch.fibre[0].share = 0.75, batch.fibre[1].share = 0.25;
    CHECK(in_microns(*mean_diameter(batch.fibre)) == Approx(24));
    batch.fibre[1].micron_high.reset();
    CHECK_FALSE(mean_diameter(batch.fibre));
    CHECK_FALSE(mean_diameter({}));
}

TEST_CASE("a fibre that is not known is never counted as middling: its range is taken off") {
    const std::vector soft{row(TraitName::softness, Driver::fibre_softness, 0, 1, 1)};
    auto d = with(Driver::base, 1);
    auto& level = d[static_cast<std::size_t>(Driver::fibre_softness)];
    level = Known(0.5);
    const auto known = trait(TraitName::softness, d, soft);
    level = Known(0.5, 0.8);
    const auto open = trait(TraitName::softness, d, soft);
    CHECK(known.sure() == known.value);
    CHECK(open.value == Approx(known.value));
    CHECK(open.spread > known.spread);
    CHECK(open.sure() < known.sure() - 0.15);  // 0.8 / sqrt(12) x 0.8 = 0.18
}

TEST_CASE("what the spinner did not say stays open, a person's own fibre is taken as wool") {
    Batch batch;
    for (const auto which :
         {Driver::plies, Driver::combed, Driver::long_draw, Driver::twist, Driver::packing})
        CHECK_FALSE(driver(batch, which));
    const auto long_drawn = [&] {
        batch.draw = Draw::long_draw;
        return *driver(batch, Driver::long_draw);
    };
    CHECK(long_drawn() == *driver(batch, Driver::spring));  // no fibre given: what any wool holds
    CHECK(*driver(batch, Driver::variegated) == 0);
    const auto softness =
        drivers_of(batch, {}, {})[static_cast<std::size_t>(Driver::fibre_softness)];
    CHECK(softness->width > 0.5);  // no fibre given: any wool
    batch.plies = 2;
    batch.preparation = Preparation::carded;
    batch.fibre = {fibre("", "", 24, 26)};
    CHECK(*driver(batch, Driver::plies) == 2);
    CHECK(*driver(batch, Driver::combed) == 0);
    CHECK(*driver(batch, Driver::spring) > 0.6);  // of 25 micron
    CHECK(long_drawn() == *driver(batch, Driver::spring));
}
