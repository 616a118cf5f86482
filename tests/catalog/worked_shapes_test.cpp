// What the steps count, what is drawn and what the metres are of is one shape.
#include <doctest/doctest.h>

#include <algorithm>

#include "catalog/reference/catalogue.hpp"
#include "engine/project/shaping.hpp"
#include "tests/catalog/carried.hpp"
#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;

namespace {

Plan planned(const Template& article, double in_tex, Length size) {
    Request request;
    request.size = size;
    return plan(article, invented::yarn(5000, in_tex), catalog::carried().fabrics, {}, request);
}

// Between its first count and its last.
double stitches_worked(const PlanPiece& p) { return p.rows * (p.stitches + p.few_stitches) / 2.0; }

double stitches_drawn(const PlanPiece& p) {
    return area(p.outline).si() * p.knit->stitches.si() * p.knit->rows.si();
}

bool is_inset(const PlanPiece& p) {
    const auto& c = p.piece->counting;
    return p.piece->name == "thumb gusset" || !c.turns.empty() || !c.gusset_of.empty();
}

}  // namespace

TEST_CASE("gussets and a heel's turn are drawn as large as their counts are") {
    int seen = 0;
    for (const auto& article : catalog::carried().templates)
        for (const double grist : {200.0, 300.0, 450.0})
            for (const auto size : {article.smallest, article.ideal, article.largest}) {
                if (article.craft != Craft::knitted) continue;
                const auto of = planned(article, grist, size);
                for (const auto& p : of.pieces) {
                    if (!is_inset(p)) continue;
                    ++seen;
                    INFO(article.name, ": ", p.piece->name, " of ", grist, " tex at ",
                         in_centimetres(size), " cm: ", p.stitches, " x ", p.rows);
                    CHECK(stitches_drawn(p) / stitches_worked(p) ==
                          near(1, p.piece->counting.begins > 0 ? 0.2 : 0.001));
                    CHECK(p.piece->counting.within.empty() == !p.piece->counting.turns.empty());
                }
            }
    CHECK(seen == 3 * 3 * 5);  // of socks two, of three kinds of mittens one
}

TEST_CASE("a thumb takes up what its gusset leaves, and a few stitches in the gap") {
    for (const char* name : {"mittens", "gloves", "fingerless-mitts"})
        for (const double grist : {200.0, 300.0, 450.0}) {
            const auto* article = catalog::carried().template_named(name);
            REQUIRE(article);
            const auto of = planned(*article, grist, article->ideal);
            const auto &thumb = *of.piece_named("thumb"), &gusset = *of.piece_named("thumb gusset");
            INFO(name, " of ", grist, " tex: ", thumb.stitches, " after ", gusset.stitches);
            CHECK(thumb.stitches > gusset.stitches);
            CHECK(thumb.stitches - gusset.stitches <= std::max(4, thumb.stitches / 4));
            CHECK(gusset.rows < of.piece_named("hand")->rows);
        }
}

// A raglan went from every second round to every third.
TEST_CASE("shaping comes in pairs of rows where there is room, on the right side") {
    int seen = 0;
    for (const auto& article : catalog::carried().templates) {
        if (article.craft != Craft::knitted) continue;
        for (const auto size : {article.smallest, article.ideal, article.largest}) {
            const auto of = planned(article, 450, size);
            for (const auto& p : of.pieces) {
                const auto shaping = shaping_of(p);
                if (p.piece->counting.every > 0) continue;
                if (shaping.times() > p.rows / 2) continue;
                for (const auto& run : shaping.runs) {
                    INFO(article.name, ": ", p.piece->name, " every ", run.every);
                    CHECK(run.every % 2 == 0);
                    ++seen;
                }
            }
        }
    }
    CHECK(seen > 0);
}

// It was found by the word in the steps: a step in other words would have lost it.
TEST_CASE("ribs on smaller needles are said in the steps and known of the pieces") {
    int seen = 0;
    for (const auto& article : catalog::carried().templates) {
        const bool told = std::any_of(
            article.steps.begin(), article.steps.end(),
            [](const auto& step) { return step.find("sizes smaller") != std::string::npos; });
        const bool known = std::any_of(article.pieces.begin(), article.pieces.end(),
                                       [](const auto& p) { return p.on_smaller; });
        INFO(article.name);
        CHECK(told == known);
        for (const auto& p : article.pieces)
            if (p.on_smaller) CHECK(p.fabric.ends_with("rib"));
        seen += known;
    }
    CHECK(seen > 10);
}

TEST_CASE("ribs in the round close: no purl is left over where it joins") {
    for (const auto& article : catalog::carried().templates) {
        if (article.craft != Craft::knitted) continue;
        for (const double grist : {150.0, 300.0, 700.0})
            for (const auto size : {article.smallest, article.ideal * 1.03, article.largest}) {
                const auto of = planned(article, grist, size);
                for (const auto& p : of.pieces) {
                    if (!p.knit || p.outline.shape != Shape::tube) continue;
                    INFO(article.name, ": ", p.piece->name, " in ", p.piece->fabric, ", ",
                         p.stitches);
                    CHECK(p.stitches % p.knit->fabric->stitch_repeat == 0);
                }
            }
    }
}
