#include "engine/lay/relief.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "engine/lay/field.hpp"
#include "engine/lay/knitted.hpp"
#include "engine/lay/woven.hpp"
#include "tests/engine/lay/plain.hpp"
#include "tests/near.hpp"

using namespace gristwright::lay;

namespace {

Fibres fibres(double thickness, double blur = 0, int plies = 1) {
    Fibres out;
    out.thickness = thickness, out.blur = blur, out.halo = blur, out.plies = plies;
    out.turn = plies > 1 ? 6 : 0;
    return out;
}

Picture knit(const char* chart, const Fibres& yarn) {
    const auto strands = knitted(read_chart(chart, stitch_letters), thick_plain, 40, 30);
    return relief(strands, {yarn, yarn}, {40, 30, 8});
}

Picture weave(const char* chart, double end, double pick, double thickness) {
    const auto strands =
        woven(read_chart(chart, weave_letters), end, pick, thickness, 12 * end, 10 * pick);
    const auto yarn = fibres(thickness);
    return relief(strands, {yarn, yarn}, {12 * end, 10 * pick, 40});
}

}  // namespace

TEST_CASE("relief: no yarn hides nothing, one straight yarn its own width, wide yarn everything") {
    const View view{10, 10, 16};
    CHECK(relief({}, {fibres(1), fibres(1)}, view).cover == 0);
    const std::vector<Strand> one{{{{-2, 5, 0}, {12, 5, 0}}, 0}};
    CHECK(relief(one, {fibres(1), fibres(1)}, view).cover == near(0.1, 0.05));
    CHECK(relief(one, {fibres(30), fibres(30)}, view).cover == 1);
}

TEST_CASE("relief: a plied yarn is as thick as a single one of the same thickness") {
    const View view{40, 10, 16};
    const std::vector<Strand> one{{{{-2, 5, 0}, {42, 5, 0}}, 0}};
    for (const int plies : {2, 3, 4}) {
        const auto yarn = fibres(3, 0, plies);
        INFO(plies);
        CHECK(relief(one, {yarn, yarn}, view).cover > 0.2);
        CHECK(relief(one, {yarn, yarn}, view).cover < 0.31);
    }
}

TEST_CASE(
    "relief: cover of woven cloth agrees with c1 + c2 - c1 c2 (F. T. Peirce 1937, from memory)") {
    for (const double thickness : {0.3, 0.6, 0.9}) {
        const double e = thickness / 1.5, p = thickness / 2.0;
        CHECK(weave("x-/-x", 1.5, 2.0, thickness).cover == near(e + p - e * p, 0.04));
        CHECK(weave("x--x/--xx/-xx-/xx--", 1.5, 2.0, thickness).cover == near(e + p - e * p, 0.04));
    }
}

TEST_CASE("relief: the same picture twice, and as large as said") {
    const auto once = knit("k", fibres(1.8, 0.5, 3)), again = knit("k", fibres(1.8, 0.5, 3));
    CHECK(once.rgb == again.rgb);
    CHECK(once.width == 320);
    CHECK(once.height == 240);
    CHECK(once.rgb.size() == std::size_t{3} * 320 * 240);
}

TEST_CASE("relief: at arm's length the stitches read the less, the more the yarn blurs") {
    // One arc minute at two metres is 0.6 mm.
    for (const char* chart :
         {"k", "kkpp", "p/k", "kkkkkkpp/kkkkkkpp/>>><<<pp/kkkkkkpp/kkkkkkpp/kkkkkkpp"}) {
        double last = 10;
        for (const double blur : {0.0, 0.3, 0.6, 0.9}) {
            const double now = contrast(knit(chart, fibres(1.8, blur, 2)), 0.6);
            INFO(chart << ", blur " << blur);
            CHECK(now < last);
            last = now;
        }
    }
}

TEST_CASE("relief: knit legs lie in front of the loop's feet, purled heads in front of the legs") {
    const auto deepest = [](const char* chart) {
        double foot = 0, leg = 0;
        for (const auto& strand : knitted(read_chart(chart, stitch_letters), thick_plain, 20, 15)) {
            const auto lowest =
                std::min_element(strand.line.begin(), strand.line.end(),
                                 [](const Spot& a, const Spot& b) { return a.y < b.y; });
            foot = lowest->z;
            for (const auto& spot : strand.line) leg = std::max(leg, spot.z);
        }
        return std::pair{foot, leg};
    };
    const auto [foot, leg] = deepest("k");
    CHECK(foot < 0);
    CHECK(leg > 0);
    CHECK(deepest("p").first > 0);
}

TEST_CASE("a blur keeps what there is and spreads as far as said") {
    Field field(61, 61, 0);
    field.at[field.index(30, 30)] = 1;
    const auto soft = blurred(field, 4);
    double sum = 0, square = 0;
    for (int y = 0; y < 61; ++y)
        for (int x = 0; x < 61; ++x) {
            const double v = double{soft.at[soft.index(x, y)]};
            sum += v, square += v * (x - 30) * (x - 30);
        }
    CHECK(sum == near(1, 1e-3));
    CHECK(std::sqrt(square / sum) == near(4, 0.15));  // means over whole pixels
    CHECK(blurred(field, 0.1).at == field.at);
}
