#include "engine/suitability/reasons.hpp"

#include <doctest/doctest.h>

#include <memory>

#include "tests/engine/told.hpp"

using namespace gristwright;

namespace {

struct Told : invented::Told {
    using invented::Told::Told;

    std::vector<FactorName> in_favour() const { return gristwright::in_favour(judged, yarn); }
    // The wishes that are not met; several yarns are no wish.
    std::vector<FactorName> against() const {
        std::vector<FactorName> out;
        for (const auto& objection : gristwright::against(judged, plan, yarn))
            if (objection.wish) out.push_back(*objection.wish);
        return out;
    }
};

using Names = std::vector<FactorName>;
constexpr auto softness = FactorName::softness, warmth = FactorName::warmth,
               consistency = FactorName::consistency;

}  // namespace

TEST_CASE("what counts against comes dearest first, what speaks for heaviest first") {
    CHECK(Told(0.35, 0.5).against() == Names{softness, warmth});
    CHECK(Told(0.68, 0.1).against() == Names{warmth});  // 0.02 is not worth saying
    CHECK(Told(0.9, 0.9).against().empty());
    CHECK(Told(0.9, 0.9).in_favour() == Names{softness, warmth});
    CHECK(Told(0.9, 0.1).in_favour() == Names{softness});
}

TEST_CASE("nothing is both for and against") {
    for (const double soft : {0.0, 0.3, 0.66, 0.7, 1.0})
        for (const double warm : {0.0, 0.3, 0.66, 0.7, 1.0}) {
            const Told t(soft, warm);
            CHECK(t.against().size() + t.in_favour().size() <= 2);
        }
}

TEST_CASE("skeins that differ never speak for an article, however little it asks") {
    Told t(0.9, 0.9);
    t.wish(Asked::consistency) = {0.4, 0.5};
    t.yarn.consistency = 0.5;
    t.judged = judge(t.plan, t.yarn);
    CHECK(t.in_favour() == Names{softness, warmth});  // one skein matches nothing
    t.yarn.skeins.resize(2);
    CHECK(t.in_favour() == Names{softness, warmth, consistency});
    t.yarn.agreement.answer = SameYarn::differ;
    CHECK(t.in_favour() == Names{softness, warmth});
    const auto all = against(t.judged, t.plan, t.yarn);
    REQUIRE(all.size() == 1);
    CHECK_FALSE(all[0].wish);
    CHECK_FALSE(all[0].need);
}

TEST_CASE("a need that is not met speaks before the wishes, and for its wish") {
    Told t(0.35, 0.5);
    auto demand = std::make_shared<Demand>();
    demand->trait = TraitName::softness;
    t.judged.unmet.push_back({demand, 0.35, 0.2, 0.9, 12});
    const auto all = against(t.judged, t.plan, t.yarn);
    REQUIRE(all.size() == 2);
    CHECK(all[0].need == demand);
    CHECK(all[1].wish == warmth);
}
