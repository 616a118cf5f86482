// A split's cut list adds up to the skeins, and its promises hold.
#include "engine/allocation/split.hpp"

#include <doctest/doctest.h>

#include "engine/allocation/checker.hpp"

using namespace gristwright;
using namespace gristwright::allocation;

namespace {

YarnProfile heron() {
    Batch batch;
    for (const auto& [name, m, g] :
         {std::tuple{"A", 171.0, 38.5}, {"B", 204.0, 45.0}, {"C", 188.0, 43.0}, {"D", 96.0, 21.6}})
        batch.skeins.push_back({name, metres(m), grams(g), LengthState::washed});
    batch.wraps = WrapsReading{wraps_per_inch(16)};
    return profile(batch, {});
}

Template shawl() {
    Template t;
    t.name = "square";
    t.article = "shawl";
    t.measure = "side";
    t.smallest = centimetres(50);
    t.ideal = centimetres(100);
    t.largest = centimetres(150);
    t.firmness = Firmness::drapey;
    t.pieces.push_back({"body", "plain", {Shape::square_from_corner, centimetres(100), {}, {}}});
    return t;
}

const Fabrics& fabrics() {
    static const Fabrics all{{[] {
                                 KnitFabric plain;
                                 plain.name = "plain";
                                 return plain;
                             }()},
                             {}};
    return all;
}

SplitRequest request(const Plan& plan) {
    SplitRequest out;
    out.wishes.push_back(
        {"swatch", knitted_sample(*plan.pieces[0].knit), nullptr, false, 1, {}, 0});
    out.wishes.push_back({"shawl", {}, &plan, true, 1, {}, 4});
    return out;
}

}  // namespace

TEST_CASE("what is wound off and what is left add up to the skeins") {
    const auto yarn = heron();
    const auto article = shawl();
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    auto asked = request(planned);
    asked.reserve = metres(5);
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    CHECK(broken_rule(s.problem, s.allocation.list).empty());
    for (std::size_t i = 0; i < yarn.skeins.size(); ++i) {
        Length off;
        Mass mass;
        for (const auto& cut : s.cuts) {
            if (cut.skein != i) continue;
            off += cut.length;
            mass += cut.mass;
            CHECK(in_metres(off + cut.ball_length) ==
                  doctest::Approx(in_metres(yarn.skeins[i].length)));
            CHECK(in_grams(mass + cut.ball_mass) == doctest::Approx(in_grams(yarn.skeins[i].mass)));
        }
    }
}

TEST_CASE("a sample comes whole from one skein, from the one asked for, and first") {
    const auto yarn = heron();
    const auto article = shawl();
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    auto asked = request(planned);
    asked.wishes[0].only_from = 3;
    const auto s = split(yarn, asked);
    REQUIRE(s.found());
    int cuts = 0;
    for (const auto& cut : s.cuts) cuts += cut.wish == 0 ? 1 : 0;
    CHECK(cuts == 1);
    for (const auto& cut : s.cuts)
        if (cut.skein == 3) {
            CHECK(cut.wish == 0);
            break;
        }
    CHECK(s.parts[0].error < 0.03);
}

TEST_CASE("the main project's metres hold the certainty asked, and a weighed sample lets it grow") {
    const auto yarn = heron();
    const auto article = shawl();
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    const auto s = split(yarn, request(planned));
    const auto& main = s.parts[1];
    const double need = planned.by_size.at(main.size / article.ideal);
    const double spread = together(planned.need.spread, planned.have.spread);
    CHECK(chance_of_enough(need, spread, main.metres.si(), 0) >= 0.899);
    CHECK(main.size_when_known > main.size);
    CHECK(main.size < planned.size);  // the swatch's metres are gone
}

TEST_CASE("what cannot be says by how much, and nothing half done looks whole") {
    const auto yarn = heron();
    auto article = shawl();
    article.smallest = centimetres(70);
    const auto planned = plan(article, yarn, fabrics(), {}, {});
    const auto s = split(yarn, request(planned));
    REQUIRE(!s.found());
    CHECK(s.cuts.empty());
    REQUIRE(s.lacking);
    auto longer = yarn;
    longer.skeins[s.lacking->skein].length += centimetres(static_cast<double>(s.lacking->length));
    CHECK(split(longer, request(planned)).found());
    longer.skeins[s.lacking->skein].length -= centimetres(1.5);
    CHECK(!split(longer, request(planned)).found());
    CHECK_THROWS_AS(split(yarn, {}), std::invalid_argument);
}
