// Articles put together: every piece is there, and what belongs together touches.
#include <doctest/doctest.h>

#include <cmath>
#include <map>

#include "cli/output/article_drawing.hpp"
#include "cli/output/article_words.hpp"
#include "cli/output/assembled.hpp"
#include "cli/output/schematic.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/drawing.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

Plan plan_of(const char* name) {
    const auto& q = asked::heron();
    return judged_plan(*q.catalogue->template_named(name), q).plan;
}

double nearest(const Line& a, const Line& b) {
    double out = 1e9;
    for (const auto& p : a) out = std::min(out, drawing::distance(p, b));
    for (const auto& p : b) out = std::min(out, drawing::distance(p, a));
    return out;
}

bool inside(Point p, const Line& outline) {
    bool in = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const auto &a = outline[i], &b = outline[j];
        if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x)
            in = !in;
    }
    return in;
}

bool touch(const Line& a, const Line& b) {
    const auto any_inside = [](const Line& of, const Line& in) {
        return std::any_of(of.begin(), of.end(), [&](Point p) { return inside(p, in); });
    };
    return nearest(a, b) < 0.1 || any_inside(a, b) || any_inside(b, a);
}

// Whether every part can be reached from the first over parts that touch (within 1 mm).
bool hangs_together(const std::vector<Placed>& parts) {
    std::vector<bool> reached(parts.size(), false);
    std::vector<std::size_t> open{0};
    reached[0] = true;
    while (!open.empty()) {
        const auto i = open.back();
        open.pop_back();
        for (std::size_t j = 0; j < parts.size(); ++j)
            if (!reached[j] && touch(parts[i].edge, parts[j].edge)) {
                reached[j] = true;
                open.push_back(j);
            }
    }
    return std::find(reached.begin(), reached.end(), false) == reached.end();
}

}  // namespace

TEST_CASE("every piece of every template is laid as often as it is made, none too large") {
    const auto& q = asked::heron();
    for (const auto& article : q.catalogue->templates) {
        INFO(article.name);
        const auto plan = judged_plan(article, q).plan;
        const auto together = assembled(plan);
        std::map<const PlanPiece*, int> laid;
        for (const auto& placed : together.parts) {
            ++laid[placed.piece];
            for (const double t : {0.0, 0.5, 1.0})
                for (const auto& p : placed.row(t))
                    CHECK((std::isfinite(p.x) && std::isfinite(p.y)));
        }
        for (const auto& piece : plan.pieces) CHECK(laid[&piece] == piece.piece->count);
        CHECK(drawing::outside(drawing::read(card_drawing(plan, q.units))).empty());
    }
}

TEST_CASE("what is worn is one shape, not a heap of boxes") {
    for (const char* name :
         {"yoke-pullover", "raglan-pullover", "child-pullover", "stranded-yoke-pullover",
          "plain-cardigan", "watch-cap", "stranded-hat", "cabled-cowl", "triangle-shawl",
          "half-circle-shawl", "crescent-shawl", "round-lace-shawl", "square-hap",
          "blanket-squares", "blanket-strips", "cabled-wrap", "mesh-stole"}) {
        INFO(std::string(name));
        const auto plan = plan_of(name);
        CHECK(hangs_together(assembled(plan).parts));
    }
}

TEST_CASE("a pair is two of a shape, mirrored") {
    for (const char* name : {"mittens", "gloves", "fingerless-mitts", "plain-socks"}) {
        INFO(std::string(name));
        const auto plan = plan_of(name);
        const auto together = assembled(plan);
        REQUIRE(together.parts.size() % 2 == 0);
        const auto half = std::ptrdiff_t(together.parts.size() / 2);
        const std::vector<Placed> one(together.parts.begin(), together.parts.begin() + half);
        const std::vector<Placed> other(together.parts.begin() + half, together.parts.end());
        CHECK(hangs_together(one));
        CHECK(hangs_together(other));
        const auto box = together.bounds(true);
        CHECK(box.low.x == near(-box.high.x, 1e-9));
    }
}

TEST_CASE("a pullover's body, sleeves and cuffs keep their planned sizes") {
    const auto plan = plan_of("yoke-pullover");
    const auto together = assembled(plan);
    for (const auto& placed : together.parts) {
        const auto& o = placed.piece->outline;
        if (o.shape != Shape::tube) continue;
        const auto length = [](Point a, Point b) { return std::hypot(a.x - b.x, a.y - b.y); };
        CHECK(length(placed.edge[0], placed.edge[1]) == near(in_centimetres(o.length), 1e-9));
        CHECK(length(placed.edge[1], placed.edge[2]) == near(in_centimetres(o.width) / 2, 1e-9));
    }
    const auto box = together.bounds(false);
    CHECK(box.low.x == near(-box.high.x, 1e-9));
}

TEST_CASE("nine squares make one blanket, three by three, woven ends have their fringe") {
    const auto squares = plan_of("blanket-squares");
    const double side = flat(squares.pieces[0].outline).width;
    CHECK(assembled(squares).bounds(true).width() == near(3 * side, 1e-9));
    const auto scarf = plan_of("woven-scarf");
    const auto box = assembled(scarf).bounds(true);
    CHECK(box.height() ==
          near(flat(scarf.pieces[0].outline).height + 200 * scarf.article->fringe.si(), 1e-9));
    CHECK(assembled(plan_of("woven-washcloths")).fringe.empty());
}

TEST_CASE("the first words name the fibre, the make and the best, sizes with their width") {
    const auto& q = asked::heron();
    CHECK(yarn_in_words(q.measured.batch) == "three-ply wool, carded and drawn short");
    CHECK(holds(size_in_words(plan_of("woven-scarf"), q.units), " x "));
    CHECK(holds(size_in_words(plan_of("woven-mug-mats"), q.units), " each"));
    CHECK(holds(size_in_words(plan_of("tube-cowl"), q.units), " high"));
    CHECK(holds(made_in_words(plan_of("stranded-hat"), q.units), "a stranded hat, round the head"));
    CHECK(holds(made_in_words(plan_of("fingerless-mitts"), q.units), " pairs)"));
    const auto answer = answer_in_words(q, {});
    CHECK(holds(answer, "too little"));
    Batch blend;
    blend.fibre.resize(2);
    blend.fibre[0].name = "Merino";
    blend.fibre[0].share = 0.7;
    blend.fibre[1].name = "silk";
    blend.fibre[1].share = 0.3;
    blend.plies = 1;
    CHECK(yarn_in_words(blend) == "singles of Merino and silk");
    CHECK(yarn_in_words({}) == "yarn, its fibre not given");
}

TEST_CASE("the sizes on a drawing are of one thing, without its fringe, and agree with its words") {
    const auto& q = asked::heron();
    const auto width = [&](const char* name) {
        return assembled(plan_of(name)).measured().width();
    };
    const auto mitts = plan_of("fingerless-mitts");
    CHECK(width("fingerless-mitts") < 0.5 * assembled(mitts).bounds(true).width());
    const auto scarf = plan_of("woven-scarf");
    const auto cloth = assembled(scarf).measured();
    CHECK(cloth.height() < assembled(scarf).bounds(true).height() - 10);
    CHECK(cloth.height() == doctest::Approx(in_centimetres(scarf.pieces[0].outline.length)));
    // An edge makes a shawl wider than its body: the drawing says so.
    const auto shawl = plan_of("triangle-shawl");
    CHECK(holds(width_laid(shawl, assembled(shawl), q.units), "with its edge"));
    CHECK_FALSE(holds(width_laid(scarf, assembled(scarf), q.units), "edge"));
}
