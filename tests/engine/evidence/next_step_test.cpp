// What a plan asks for next, against its own figures.
#include "engine/evidence/next_step.hpp"

#include <doctest/doctest.h>

#include "engine/estimate/estimate.hpp"
#include "engine/evidence/constants.hpp"
#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

// A strip that grows in its length only, so that its size is as its metres; the batch is short of
// the largest.
struct Strip {
    Template article;
    Fabrics fabrics;
    YarnProfile yarn;
    Plan planned;

    explicit Strip(Length to_hand) {
        article.name = article.article = "strip";
        article.measure = "length";

        article.smallest = centimetres(10);
        article.ideal = article.largest = centimetres(400);
        article.pieces.push_back(
            {"body", "plain", {Shape::rectangle, centimetres(20), centimetres(400), {}}});
        article.pieces.back().grows = Grows::length;
        fabrics.knitted.emplace_back();
        fabrics.knitted[0].name = "plain";
        yarn.linear_density = {tex(225), 0.02};
        yarn.length = {to_hand, 0.01};
        yarn.mass = to_hand * tex(225);
        planned = plan(article, yarn, fabrics, {}, {});
    }
};

}  // namespace

TEST_CASE("what is set aside is what the plan takes at the chance asked, no more than there is") {
    const Strip strip(metres(300));
    const auto aside = to_set_aside(strip.planned, strip.yarn);
    REQUIRE(aside);
    CHECK(aside->share <= 1);
    CHECK(aside->share > 0.5);  // it is as large as the metres allow
    CHECK(aside->mass / strip.yarn.mass == near(aside->share, 1e-9));
    auto lacking = strip.planned;
    lacking.reach = Reach::short_of;
    CHECK(!to_set_aside(lacking, strip.yarn));
}

TEST_CASE("a sample lets a strip grow by what it need no longer set aside") {
    const Strip strip(metres(300));
    const auto then = size_after_sample(strip.planned, strip.yarn);
    REQUIRE(then);
    CHECK(*then > strip.planned.size);
    const double before = set_aside(0.90, strip.planned.need.spread, strip.yarn.length.spread);
    const double after = set_aside(0.90, constants::swatch_metres, strip.yarn.length.spread);
    CHECK(*then / strip.planned.size == near(before / after, 0.02));
    auto known = strip.yarn;
    known.evidence.weighed.emplace_back();
    CHECK(!size_after_sample(strip.planned, known));  // there is one
    auto whole = strip.planned;
    whole.size = strip.article.largest;
    CHECK(!size_after_sample(whole, strip.yarn));
}
