// Every picture and chart, for yarns and articles of all kinds: well formed, inside its own edges.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include <fmt/core.h>

#include "cli/output/axis.hpp"
#include "cli/output/charts.hpp"
#include "cli/output/cloth_picture.hpp"
#include "cli/output/edge_counts.hpp"
#include "cli/output/joins.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/place_words.hpp"
#include "cli/output/schematic.hpp"
#include "cli/output/short_names.hpp"
#include "cli/output/split_picture.hpp"
#include "cli/output/wind_off.hpp"
#include "engine/project/on_the_loom.hpp"
#include "engine/project/order.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/drawing.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

const Units all_units[] = {Units{UnitChoice::metric}, Units{UnitChoice::imperial},
                           Units{UnitChoice::both}};

void check_inside(const Svg& svg) {
    const auto drawn = drawing::read(svg);
    const auto out = drawing::outside(drawn);
    INFO(drawn.title);
    if (!out.empty()) INFO("outside: ", out.front());
    CHECK(out.empty());
    CHECK_FALSE(holds(svg.file(), "nan"));
    CHECK_FALSE(holds(svg.file(), "inf "));
}

// When in the order of the work the part is made that a join lies in.
std::ptrdiff_t turn_of(const Join& join, const Assembled& article, const Plan& plan) {
    const auto* piece = article.parts[join.part].piece;
    int which = 0;
    for (std::size_t i = 0; i <= join.part; ++i) which += article.parts[i].piece == piece ? 1 : 0;
    const auto order = order_of_work(*plan.article);
    return std::find_if(order.begin(), order.end(),
                        [&](const Worked& w) {
                            return &plan.pieces[w.piece] == piece && w.which == which;
                        }) -
           order.begin();
}

}  // namespace

TEST_CASE("every template's plan is drawn inside its picture, in any units") {
    for (const unsigned seed : {0U, 1U, 4U}) {
        auto q = asked::random_batch(seed, 1 + seed);
        for (const auto& units : all_units) {
            q.units = units;
            for (const auto& article : q.catalogue->templates)
                check_inside(plan_picture(judged_plan(article, q), q));
        }
    }
}

TEST_CASE("a drawn plan says its sizes and where each skein ends") {
    const auto& q = asked::heron();
    const auto judged = judged_plan(*q.catalogue->template_named("triangle-shawl"), q);
    const auto drawn = drawing::read(plan_picture(judged, q));
    CHECK(holds(drawn.title, "Triangle shawl"));
    CHECK(drawn.says("Triangle shawl, knitted"));
    CHECK(holds(drawn.description, q.units.size(judged.plan.pieces[0].outline.width)));
    CHECK(drawn.says("direction of work"));
    // The skeins before the last that the shawl's metres do not outlast.
    std::size_t ends = 0;
    double used = 0;
    for (std::size_t s = 0; s + 1 < q.yarn.skeins.size(); ++s) {
        used += in_metres(q.yarn.skeins[s].length);
        ends += used < in_metres(judged.plan.need.mid) ? 1 : 0;
    }
    CHECK(ends > 0);
    CHECK(drawn.count("join") == ends);
    CHECK(asked::times(drawn.description, " ends, row") == ends);
}

TEST_CASE(
    "skeins end where the yarn before them is used, through all pieces, forwards or backwards") {
    for (const unsigned seed : {0U, 2U, 7U}) {
        auto q = asked::random_batch(seed, 6);
        q.yarn.agreement.answer = SameYarn::same;  // taken one after another
        for (const char* name : {"yoke-pullover", "raglan-pullover", "plain-socks", "mittens",
                                 "triangle-shawl", "blanket-squares", "woven-scarf",
                                 "blanket-strips", "pin-loom-squares", "weft-only-scarf"}) {
            INFO(seed, " ", std::string(name));
            const auto plan = judged_plan(*q.catalogue->template_named(name), q).plan;
            const auto article = assembled(plan);
            const auto ends = joins(article, plan, q.yarn);
            double used = 0;
            std::size_t wanted = 0;
            for (std::size_t s = 0; s + 1 < q.yarn.skeins.size(); ++s) {
                used += in_metres(q.yarn.skeins[s].length);
                wanted += used < in_metres(plan.need.mid) ? 1 : 0;
            }
            CHECK(ends.size() == wanted);
            for (std::size_t i = 0; i < ends.size(); ++i) {
                const auto& p = *article.parts[ends[i].part].piece;
                CHECK(ends[i].skein == i);
                CHECK((i == 0 ||
                       turn_of(ends[i], article, plan) >= turn_of(ends[i - 1], article, plan)));
                CHECK(ends[i].number >= 1);
                CHECK(ends[i].number <= (ends[i].in_warp ? p.panel.ends
                                         : p.knit        ? p.rows
                                                         : p.panel.picks));
                CHECK(ends[i].line.size() >= 2);
            }
        }
    }
}

TEST_CASE("skeins that differ run through by turns, and are said to") {
    auto q = asked::of_options({"--skein", "300m/80g", "--skein", "300m/80g", "--wraps", "12wpi"});
    const auto drawn = [&] {
        const auto judged = judged_plan(*q.catalogue->template_named("garter-scarf"), q);
        return drawing::read(plan_picture(judged, q));
    };
    CHECK(drawn().count("join") == 1);
    q.yarn.agreement.answer = SameYarn::alternate;
    CHECK(drawn().count("join") == 0);
    CHECK(drawn().says("The skeins differ: take two by turns, two rows of each."));
    const auto judged = judged_plan(*q.catalogue->template_named("garter-scarf"), q);
    const auto from = wind_off(judged.plan, q.yarn);
    REQUIRE(from.size() == 2);
    CHECK(in_metres(from[0].takes) == near(in_metres(from[1].takes), 1e-9));
}

TEST_CASE("the plan, the sheet and the drawing name the same row where a skein ends") {
    const auto& q = asked::heron();
    std::size_t seen = 0;
    for (const auto& t : q.catalogue->templates) {
        INFO(t.name);
        const auto judged = judged_plan(t, q);
        const auto article = assembled(judged.plan);
        const auto drawn = joins(article, judged.plan, q.yarn);
        const auto ends = skein_ends(judged.plan, q.yarn);
        std::vector<std::string> names;
        for (const auto& skein : q.yarn.skeins) names.push_back(skein.name);
        const auto said = ends_in_words(judged.plan, ends, names, q.units);
        REQUIRE(drawn.size() == ends.size());
        for (std::size_t i = 0; i < drawn.size(); ++i) {
            CHECK(article.parts[drawn[i].part].piece == &judged.plan.pieces[ends[i].place.piece]);
            if (drawn[i].in_warp || t.craft == Craft::woven) continue;
            ++seen;
            CHECK(holds(said, fmt::format("{} ends in r", names[drawn[i].skein])));
            CHECK(holds(said, fmt::format(" {} of ", drawn[i].number)));
        }
    }
    CHECK(seen > 100);
}

TEST_CASE("a taper is drawn from the end it is worked from") {
    const auto& q = asked::heron();
    std::size_t tapers = 0;
    for (const auto& t : q.catalogue->templates) {
        INFO(t.name);
        const auto plan = judged_plan(t, q).plan;
        for (const auto& placed : assembled(plan).parts) {
            if (placed.piece->outline.shape != Shape::taper) continue;
            ++tapers;
            CHECK(placed.backwards == placed.piece->piece->narrow_first);
        }
    }
    CHECK(tapers > 15);
}

TEST_CASE("counts stand on a piece's edges, and how it narrows agrees with them") {
    const auto& q = asked::heron();
    const auto plan = judged_plan(*q.catalogue->template_named("yoke-pullover"), q).plan;
    for (const auto& p : plan.pieces) {
        const auto counts = edge_counts(p, false);
        CHECK(counts.first == std::to_string(p.stitches) + " st");
        CHECK(counts.slope.empty() == (p.outline.shape != Shape::taper));
        if (p.outline.shape != Shape::taper) CHECK(counts.last == counts.first);
        if (p.outline.shape == Shape::taper) {
            CHECK(holds(counts.slope, "fewer"));
            CHECK(holds(edge_counts(p, true).slope, "more"));
        }
    }
}

TEST_CASE("a warp is drawn from end to end with its numbers, waste at both ends, and its heddle") {
    const auto& q = asked::heron();
    const auto judged = judged_plan(*q.catalogue->template_named("woven-scarf"), q);
    const auto drawn = drawing::read(plan_picture(judged, q));
    const auto& t = *judged.plan.article;
    const auto& panel = judged.plan.pieces[0].panel;
    CHECK(drawn.says("Warp, from one end to the other"));
    CHECK(drawn.says("tied on: " + q.units.size(waste_beyond_fringe(t) / 3)));
    CHECK(drawn.says("behind the heddle: " + q.units.size(waste_beyond_fringe(t) * (2.0 / 3))));
    CHECK(drawn.says("fringe: " + q.units.size(t.fringe) + " at each end"));
    CHECK(drawn.count("dent") == 12);
    bool said = false;
    for (const auto& text : drawn.texts)
        said = said || holds(text.words, std::to_string(panel.ends) + " ends of");
    CHECK(said);
    const auto framed = judged_plan(*q.catalogue->template_named("pin-loom-squares"), q);
    CHECK(drawing::read(plan_picture(framed, q)).count("waste") == 0);
}

TEST_CASE("charts of any yarn and of any number of skeins stay inside their edges") {
    for (unsigned seed = 0; seed < 24; ++seed) {
        const auto q = asked::random_batch(seed, 1 + seed * 2);
        for (const auto& units : all_units) {
            check_inside(class_chart(q.yarn, q.catalogue->yarn, units));
            check_inside(skein_chart(q.yarn, units));
        }
    }
}

TEST_CASE("with more than 24 skeins the others are counted") {
    const auto q = asked::random_batch(2, 31);
    const auto drawn = drawing::read(skein_chart(q.yarn, q.units));
    CHECK(drawn.count("dot") == 24);
    bool counted = false;
    for (const auto& text : drawn.texts)
        counted = counted || holds(text.words, "and 7 more skeins");
    CHECK(counted);
}

TEST_CASE("names that people gave reach no further than their own text") {
    auto q = asked::of_heron();
    q.yarn.skeins[0].name = "</text><script>x</script>\xE2\x80\xAE";
    q.yarn.skeins[1].name = std::string(400, 'w');
    q.yarn.skeins[2].name = "羊毛羊毛羊毛羊毛羊毛羊毛羊毛羊毛羊毛羊毛";
    check_inside(skein_chart(q.yarn, q.units));
    check_inside(plan_picture(judged_plan(*q.catalogue->template_named("triangle-shawl"), q), q));
    CHECK(drawing::read(skein_chart(q.yarn, q.units)).says("羊毛羊毛羊毛羊…羊毛羊毛羊毛羊毛"));
}

TEST_CASE("names cut to a width can still be told apart") {
    const std::vector<std::vector<std::string>> many = {
        {"Gorse 2026 autumn skein 1", "Gorse 2026 autumn skein 14", "Gorse 2026 autumn skein 2"},
        {std::string(60, 'x') + "1", std::string(60, 'x') + "2"},
        {std::string(30, 'a') + std::string(30, 'b'), std::string(31, 'a') + std::string(29, 'b')},
        {"A", "B", "the alternative that was spun last of all", "the alternative that is neither"},
        {"A", "A"}};
    for (const auto& names : many) {
        const auto cut = short_names(names, 16);
        for (std::size_t i = 0; i < cut.size(); ++i) {
            INFO(cut[i]);
            CHECK(characters(cut[i]) <= 16);
            for (std::size_t j = 0; j < i; ++j) CHECK((cut[i] != cut[j] || names[i] == names[j]));
        }
    }
    CHECK(short_names({"A", "Bracken"}, 16) == std::vector<std::string>{"A", "Bracken"});
}

TEST_CASE(
    "the chance that the yarn reaches falls from left to right and is drawn where it is said") {
    for (const auto& units : all_units)
        for (const char* name : {"triangle-shawl", "woven-scarf", "watch-cap", "plain-socks"}) {
            const auto& q = asked::heron();
            const auto judged = judged_plan(*q.catalogue->template_named(name), q);
            const auto chart = certainty_chart(judged.plan, units);
            check_inside(chart);
            const auto drawn = drawing::read(chart);
            CHECK(drawn.says(units.size(judged.plan.size) + ", " + percent(judged.plan.certainty)));
            CHECK(drawn.says("90 % asked"));
            CHECK(holds(drawn.description, percent(judged.plan.certainty)));
        }
}

TEST_CASE("points lost are drawn dearest first, and what is met is named, together they are all") {
    const auto& q = asked::heron();
    for (const auto& article : q.catalogue->templates) {
        const auto judged = judged_plan(article, q);
        const auto lost = points_lost(judged.judgement);
        const auto chart = lost_chart(judged.judgement);
        check_inside(chart);
        CHECK(drawing::read(chart).count("lost") == lost.size());
        CHECK(std::is_sorted(lost.begin(), lost.end(),
                             [](const auto& a, const auto& b) { return a.points > b.points; }));
        std::size_t asked = 0, needs = 0;
        for (const auto& factor : judged.judgement.factors) asked += factor.weight > 0 ? 1 : 0;
        for (const auto& need : judged.judgement.unmet) needs += need.cost >= 0.5 ? 1 : 0;
        CHECK(lost.size() + fully_met(judged.judgement).size() == asked + needs);
    }
}

TEST_CASE("a bar is filled by its share, of a batch it shows the range too") {
    for (const double share : {0.0, 0.37, 1.0})
        CHECK(holds(share_bar(share).silent(), "width=\"" + decimal(100 * share) + "\""));
    const auto& q = asked::heron();
    const auto plan = judged_plan(*q.catalogue->template_named("plain-socks"), q).plan;
    const auto bar = batch_share_bar(plan).silent();
    CHECK(holds(bar, "width=\"" + decimal(100 * (plan.need.mid / plan.have.mid)) + "\""));
    CHECK(holds(bar, "whisker"));
    CHECK(holds(bar, "aria-hidden"));
}

TEST_CASE("the cloth of knitted and woven articles is drawn inside its picture") {
    const auto& q = asked::heron();
    for (const char* name : {"triangle-shawl", "woven-scarf", "cabled-hat"}) {
        const auto judged = judged_plan(*q.catalogue->template_named(name), q);
        const auto picture = cloth_picture(judged.plan, q);
        CHECK(asked::times(picture.file(), "data:image/jpeg;base64,") == 4);
        const auto drawn = drawing::read(picture);
        CHECK(drawing::outside(drawn).empty());
        CHECK(asked::holds(drawn.description, "From arm's length"));
    }
}

TEST_CASE("cloth in two yarns is drawn in two colours, and says which the second is") {
    const auto& q = asked::heron();
    const auto described = [&](const char* name, const Question& asked) {
        const auto plan = judged_plan(*q.catalogue->template_named(name), asked).plan;
        return drawing::read(cloth_picture(plan, asked)).description;
    };
    for (const char* name : {"houndstooth-scarf", "log-cabin-cowl", "mosaic-cowl", "stranded-hat"})
        CHECK(asked::holds(described(name, q), "a dark natural brown, since no colour"));
    CHECK(asked::holds(described("weft-only-scarf", q), "the warp drawn in"));
    CHECK_FALSE(asked::holds(described("woven-scarf", q), "drawn in"));
    auto dark = q;
    dark.measured.colours = {{0.1, 0.1, 0.15}};
    CHECK(asked::holds(described("houndstooth-scarf", dark), "a pale natural white"));
    auto told = q;
    told.request.other.name = "Sedge";
    told.request.other.colours = {{0.2, 0.5, 0.4}};
    CHECK(asked::holds(described("houndstooth-scarf", told), "in the colour of Sedge"));
}

TEST_CASE("a value stands on its axis in proportion, beyond its ends at the end") {
    const Axis plain{10, 30, 100, 200, false}, logarithmic{1, 100, 0, 10, true};
    const std::pair<double, double> places[] = {
        {10, 100}, {30, 200}, {20, 150}, {0, 100}, {99, 200}};
    for (const auto& [value, at] : places) CHECK(plain.at(value) == near(at, 1e-12));
    CHECK(logarithmic.at(10) == near(5, 1e-12));
    CHECK(logarithmic.at(1000) == near(10, 1e-12));
}

TEST_CASE("ticks are round, inside the axis, and about as many as wanted") {
    for (const double from : {0.0, 0.013, 3.7, 95.0, 1234.0})
        for (const double wide : {0.004, 0.3, 7.0, 81.0, 2600.0})
            for (const int wanted : {4, 5}) {
                const Axis axis{from, from + wide, 0, 1, false};
                const auto all = ticks(axis, wanted);
                INFO(from, " + ", wide);
                CHECK(all.size() >= 2);
                CHECK(all.size() <= 2 * std::size_t(wanted));
                for (const double value : all) {
                    CHECK(value >= from - 1e-6 * wide);
                    CHECK(value <= axis.to + 1e-6 * axis.to);
                }
                const double step = all[1] - all[0];
                const double first = step / std::pow(10, std::floor(std::log10(step * 1.0001)));
                CHECK(std::min({std::abs(first - 1), std::abs(first - 2), std::abs(first - 5)}) <
                      1e-6);
            }
}
