// The project sheet: its ladders against the plan that they are made from.
#include "cli/output/sheet.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <numeric>

#include "cli/output/ball_ladder.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/wind_off.hpp"
#include "tests/cli/asked.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

// Calls `see` with every article of the catalogue in this batch.
template <class See>
void each_plan(const Question& q, See see) {
    for (const auto& article : q.catalogue->templates) {
        const auto judged = judged_plan(article, q);
        INFO(article.name);
        see(judged);
    }
}

}  // namespace

TEST_CASE("the stretches of the work follow each other and come to what the plan needs") {
    each_plan(asked::heron(), [](const JudgedPlan& judged) {
        const auto work = stretches(judged.plan);
        REQUIRE_FALSE(work.empty());
        Length at;
        for (const auto& stretch : work) {
            CHECK(stretch.begins == at);
            CHECK(stretch.ends > stretch.begins);
            at = stretch.ends;
        }
        CHECK(in_metres(at) == near(in_metres(judged.plan.need.mid), 0.01));
    });
}

TEST_CASE("yarn used up and the place of the work rise together") {
    each_plan(asked::heron(), [](const JudgedPlan& judged) {
        const auto work = stretches(judged.plan);
        const auto whole = work.back().ends;
        double before = -1;
        for (int i = 0; i <= 20; ++i) {
            const auto place = place_after(judged.plan, work, whole * (i / 20.0));
            const auto stretch = std::find_if(work.begin(), work.end(), [&](const Stretch& s) {
                return s.piece == place.piece && s.which == place.which && s.warp == place.warp;
            });
            REQUIRE(stretch != work.end());
            const double at = double(stretch - work.begin()) + place.share;
            CHECK(at >= before);
            before = at;
        }
        CHECK(place_after(judged.plan, work, whole * 2).share == 1);
    });
}

TEST_CASE("what is wound off is what is set aside, and no skein gives more than it has") {
    const auto& q = asked::heron();
    each_plan(q, [&](const JudgedPlan& judged) {
        Length all;
        for (const auto& from : wind_off(judged.plan, q.yarn)) {
            CHECK(from.takes.si() > 0);
            CHECK(in_metres(from.takes + from.stays) ==
                  near(in_metres(q.yarn.skeins[from.skein].length), 1e-9));
            all += from.takes;
        }
        CHECK(in_metres(all) == near(in_metres(set_aside_for(judged.plan)), 1e-9));
    });
}

TEST_CASE("the ball's ladder goes down in round steps, and its work goes on") {
    for (const char* units : {"metric", "imperial"}) {
        const auto q = asked::of_heron({"--units", units});
        each_plan(q, [&](const JudgedPlan& judged) {
            const auto ladder = ladder_of(judged.plan, q.yarn.linear_density.mid, q.units, 9);
            CHECK(ladder.size() <= 9);
            if (judged.plan.reach != Reach::short_of) CHECK_FALSE(ladder.empty());
            for (std::size_t r = 0; r + 1 < ladder.size(); ++r) {
                CHECK(ladder[r].ball > ladder[r + 1].ball);
                CHECK(in_metres(ladder[r].left) ==
                      near(in_metres(ladder[r].ball / q.yarn.linear_density.mid), 1e-9));
            }
        });
    }
    const Units metric(UnitChoice::metric), imperial(UnitChoice::imperial);
    std::vector<std::string> said;
    for (const auto rung : rungs(grams(38.5), metric, 8)) said.push_back(rung_words(rung, metric));
    CHECK(joined(said) == "35 g, 30 g, 25 g, 20 g, 15 g, 10 g, 5 g");
    said.clear();
    for (const auto rung : rungs(ounces(1.9), imperial, 8))
        said.push_back(rung_words(rung, imperial));
    CHECK(joined(said) == "1.75 oz, 1.5 oz, 1.25 oz, 1 oz, 0.75 oz, 0.5 oz, 0.25 oz");
    CHECK(rungs(grams(0.5), metric, 8).empty());
}

TEST_CASE("a sheet holds its steps, its skeins, its figures and its cautions") {
    const auto& q = asked::heron();
    each_plan(q, [&](const JudgedPlan& judged) {
        const auto text = sheet(judged, q);
        CHECK(holds(text, judged.plan.article->title.substr(0, 3)));
        CHECK_FALSE(holds(text, "{{"));
        CHECK(asked::times(text, "<li>") == judged.plan.article->steps.size());
        CHECK(holds(text, "Mind."));
        CHECK(holds(text, q.units.yarn(wind_off(judged.plan, q.yarn).front().takes)));
        CHECK(holds(text, "does not run out"));
        CHECK((judged.plan.reach == Reach::short_of) == holds(text, "Short by "));
    });
}

TEST_CASE("what people wrote stands on a sheet as text") {
    const auto q = asked::of_options({"--skein", "300m/90g", "--name", "<script>x</script>"});
    const auto* article = q.catalogue->template_named("watch-cap");
    CHECK_FALSE(holds(sheet(judged_plan(*article, q), q), "<script>"));
}

TEST_CASE(
    "what goes round is counted in rounds, and only what grows or narrows has a widest place") {
    const auto& q = asked::heron();
    const auto of = [&](const char* name) {
        return sheet(judged_plan(*q.catalogue->template_named(name), q), q);
    };
    const auto legs = of("leg-warmers");
    CHECK(holds(legs, "rounds of the leg"));
    CHECK(holds(legs, "Rounds, a square for"));
    CHECK_FALSE(holds(legs, " rows"));
    CHECK_FALSE(holds(legs, "widest"));
    const auto shawl = of("triangle-shawl");
    CHECK(holds(shawl, "stitches at the widest"));
    CHECK(holds(shawl, "Rows, a square for"));
}
