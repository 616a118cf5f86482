// What a range is made of: which needle, which hands, which fabric, which kind of piece.
#include <doctest/doctest.h>

#include <cmath>
#include <memory>

#include "engine/cloth/knitting_constants.hpp"
#include "engine/project/plan.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

YarnProfile yarn() {
    Batch batch;
    batch.skeins.push_back({"A", metres(400), grams(100), LengthState::washed});
    return profile(batch, {});
}

double margin(const YarnProfile& of, const std::vector<Length>& needles) {
    return knit_cloth(of, KnitFabric{}, Firmness::ordinary, needles).metres_per_area.spread;
}

Template hat(double apart) {
    Template out;
    out.name = "cap", out.article = "hat";
    out.smallest = centimetres(40), out.ideal = centimetres(50), out.largest = centimetres(60);
    PieceTemplate body;
    body.name = "body", body.fabric = "plain";
    body.outline = {Shape::tube, centimetres(50), centimetres(20), {}};
    out.pieces = {body};
    out.apart.spread = apart;
    return out;
}

Fabrics plain() {
    Fabrics out;
    out.knitted.emplace_back();
    out.knitted.back().name = "plain";
    return out;
}

}  // namespace

TEST_CASE("a needle that is told narrows the metres, several that would serve do not") {
    const auto wanted = knit_cloth(yarn(), KnitFabric{}, Firmness::ordinary, {}).needle;
    const double none = margin(yarn(), {});
    CHECK(margin(yarn(), {wanted}) < none);
    CHECK(margin(yarn(), {wanted, wanted * 1.05}) == near(none, 0.01));
    CHECK(margin(yarn(), {wanted, wanted * 3}) < none);
}

TEST_CASE("a counted gauge narrows more than a needle") {
    auto counted = yarn();
    const auto cloth = knit_cloth(yarn(), KnitFabric{}, Firmness::ordinary, {});
    counted.washed_gauge = cloth.gauge.mid;
    CHECK(margin(counted, {}) < margin(yarn(), {cloth.needle}));
}

TEST_CASE("a plan is as wide as its cloth and its kind together, weighed cloth has left its kind") {
    const auto spread = [&](double apart, const YarnProfile& of) {
        return plan(hat(apart), of, plain(), {}, {}).need.spread;
    };
    const double cloth = spread(0, yarn());
    CHECK(spread(0.25, yarn()) == near(std::hypot(cloth, 0.25), 1e-9));
    auto weighed = yarn();
    weighed.evidence.weighed.push_back({"plain", {1, 0.03}, 0});
    CHECK(spread(0.25, weighed) == near(spread(0.10, weighed), 1e-9));
    CHECK(spread(0.25, weighed) < 0.10);
}
