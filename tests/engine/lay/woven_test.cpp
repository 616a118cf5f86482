#include <doctest/doctest.h>

#include <algorithm>

#include "engine/lay/woven.hpp"
#include "tests/near.hpp"

using namespace gristwright::lay;

namespace {

Cloth plain(double end, double pick, double thickness) {
    return woven(read_chart("x-/-x", weave_letters), end, pick, thickness, 12 * end, 10 * pick);
}

}  // namespace

TEST_CASE("cover of drawn cloth agrees with Peirce's c1 + c2 - c1 c2") {
    for (const double thickness : {0.3, 0.6, 0.9, 1.4}) {
        const auto cloth = plain(1.5, 2.0, thickness);
        CHECK(cover(cloth) == near(woven_cover(thickness / 1.5, thickness / 2.0), 0.015));
    }
}

TEST_CASE("how the ends cross does not change what they cover") {
    const auto twill = read_chart("x--x/--xx/-xx-/xx--", weave_letters);
    CHECK(cover(woven(twill, 1.5, 2, 0.8, 18, 20)) == near(cover(plain(1.5, 2, 0.8)), 0.01));
}

TEST_CASE("ends lie behind, then picks, then ends that pass over") {
    const auto cloth = plain(2, 2, 0.5);
    CHECK(std::is_sorted(cloth.runs.begin(), cloth.runs.end(),
                         [](const auto& a, const auto& b) { return a.layer < b.layer; }));
    CHECK(cloth.runs.front().layer == 0);
    CHECK(cloth.runs.back().layer == 2);
}

TEST_CASE("an end over two picks together is one stretch") {
    const auto twill = read_chart("x--x/--xx/-xx-/xx--", weave_letters);
    const auto cloth = woven(twill, 2, 2, 0.5, 16, 16);
    const auto longest =
        std::max_element(cloth.runs.begin(), cloth.runs.end(), [](const auto& a, const auto& b) {
            return (a.layer == 2 ? length(a) : 0) < (b.layer == 2 ? length(b) : 0);
        });
    CHECK(length(*longest) == doctest::Approx(4));
}
