// Everything that a batch makes beside a standing figure.
#include <doctest/doctest.h>

#include <algorithm>

#include "cli/output/figure.hpp"
#include "cli/output/line_up.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/ranking.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/drawing.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

TEST_CASE("the hopeful size is the one with an even chance, and only where larger is possible") {
    const auto& q = asked::heron();
    int hopeful = 0;
    for (const auto& article : q.catalogue->templates) {
        INFO(article.name);
        const auto plan = judged_plan(article, q).plan;
        const auto size = hopeful_size(plan);
        if (!size) continue;
        ++hopeful;
        CHECK(plan.reach != Reach::short_of);
        CHECK_FALSE(article.fitted);
        CHECK(*size > plan.size);
        CHECK(*size <= article.largest);
        const double chance = plan.certainty_at(*size);
        CHECK((*size == article.largest ? chance >= 0.5 : chance == near(0.5, 0.01)));
    }
    CHECK(hopeful > 5);
}

TEST_CASE("the figure is as tall as it says and stands on the ground") {
    Bounds box;
    for (const auto& line : standing_figure()) box.hold(line);
    CHECK(-box.low.y == near(figure_height, 1e-9));
    CHECK(box.high.y == near(0, 1));
    CHECK(box.low.x == near(-box.high.x, 1e-9));
}

TEST_CASE("all are drawn at one scale, the hopeful outline round the sure one") {
    const auto& q = asked::heron();
    const auto ranked = rank(q);
    const auto made = all_made(ranked);
    const auto all = line_up(made, q);
    REQUIRE(all.size() == made.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        INFO(all[i].judged->plan.article->name);
        const auto box = all[i].bounds(), sure = all[i].sure.bounds(false);
        CHECK(box.height() >= sure.height() - 1e-9);
        CHECK(box.width() >= sure.width() - 1e-9);
        CHECK((i == 0 || all[i - 1].bounds().height() >= box.height()));
        for (const double scale : {0.5, 2.0}) {
            const auto svg = drawn(all[i], scale);
            CHECK(svg.width() == near(scale * (box.width() + 2), 1e-9));
            CHECK(drawing::outside(drawing::read(svg)).empty());
            CHECK((drawing::read(svg).count("hope") > 0) == (all[i].hoped != nullptr));
        }
    }
}

TEST_CASE("the poster holds all of them on one sheet, for few and for many skeins") {
    for (const unsigned seed : {0U, 3U, 5U, 9U}) {
        const auto q = seed == 0 ? asked::of_heron() : asked::random_batch(seed, seed);
        const auto ranked = rank(q);
        const auto poster = line_up_poster(ranked, q);
        const auto sheet = drawing::read(poster.file());
        const auto outside = drawing::outside(sheet);
        const auto first = outside.empty() ? std::string() : outside.front();
        INFO(seed, " ", first);
        CHECK(outside.empty());
        std::size_t named = 0;
        const auto made = all_made(ranked);
        for (const auto* judged : made)
            named += holds(sheet.description, judged->plan.article->title + ": ") ? 1 : 0;
        const bool left_out =
            std::any_of(sheet.texts.begin(), sheet.texts.end(),
                        [](const auto& text) { return holds(text.words, " not drawn"); });
        CHECK((left_out ? named < made.size() : named == made.size()));
        CHECK(named > made.size() / 3);
        CHECK(holds(poster.poster(), "width=\"1191pt\" height=\"842pt\""));
    }
}

TEST_CASE("a figure keeps its unit on its line") {
    CHECK(kept_together("205 x 46 cm, perhaps 12 %") ==
          "205\u00a0x\u00a046\u00a0cm, perhaps 12\u00a0%");
    CHECK(broken("one two three", 7) == std::vector<std::string>{"one two", "three"});
}
