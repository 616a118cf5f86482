#include "engine/yarn/behaviour.hpp"

#include <doctest/doctest.h>

#include "engine/yarn/batch.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

FibrePart part(double share, double softness, double wear, const char* category = "") {
    FibrePart out;
    out.share = share;
    out.category = category;
    out.behaviour.of(Behaviour::softness) = Level{softness, softness, Mark::read};
    out.behaviour.of(Behaviour::wear) = Level{wear, wear, Mark::read};
    return out;
}

FibrePart wool_of(double micron) {
    FibrePart out;
    out.micron_low = out.micron_high = microns(micron);
    return out;
}

double level(const std::vector<FibrePart>& fibre, Behaviour which) {
    return behaviour_of(fibre).of(which)->middle();
}

}  // namespace

TEST_CASE("the roughest part of a blend is felt beyond its share, a trace of it is not") {
    CHECK(level({part(1, 0.8, 0.3)}, Behaviour::softness) == Approx(0.8));
    // Mean 0.5, roughest 0.2: half way, 0.35.
    CHECK(level({part(0.5, 0.8, 0.3), part(0.5, 0.2, 0.3)}, Behaviour::softness) == Approx(0.35));
    CHECK(level({part(0.97, 0.8, 0.3), part(0.03, 0.2, 0.3)}, Behaviour::softness) ==
          Approx(0.782));
}

TEST_CASE("nylon in a blend adds wear beyond its share, and no more beyond a fifth") {
    const auto with = [](double nylon) {
        return level({part(1 - nylon, 0.5, 0.4), part(nylon, 0.7, 0.95, "synthetic")},
                     Behaviour::wear);
    };
    CHECK(with(0.22) == Approx(0.78 * 0.4 + 0.22 * 0.95 + 0.10));
    CHECK(with(0.11) == Approx(0.89 * 0.4 + 0.11 * 0.95 + 0.05));
    CHECK(with(0.40) == Approx(0.60 * 0.4 + 0.40 * 0.95 + 0.10));
    CHECK(level({part(1, 0.7, 0.95, "synthetic")}, Behaviour::wear) == Approx(0.95));
}

TEST_CASE("a wool with only a diameter behaves by it, one of which nothing is known stays open") {
    const auto fine = behaviour_of({wool_of(18)}), coarse = behaviour_of({wool_of(36)});
    CHECK(fine.of(Behaviour::softness)->middle() > coarse.of(Behaviour::softness)->middle());
    CHECK(fine.of(Behaviour::spring)->middle() > coarse.of(Behaviour::spring)->middle());
    CHECK(fine.of(Behaviour::wear)->middle() < coarse.of(Behaviour::wear)->middle());
    CHECK(fine.of(Behaviour::felts)->high > fine.of(Behaviour::felts)->low);  // breed not known
    const auto any = behaviour_of({});
    CHECK(any.of(Behaviour::softness)->high - any.of(Behaviour::softness)->low > 0.5);
}

TEST_CASE("every way a yarn is built is found by its own word") {
    for (std::size_t m = 0; m < made_count; ++m)
        CHECK(made_named(words(static_cast<Made>(m))) == static_cast<Made>(m));
    CHECK_FALSE(made_named("knotted"));
}
