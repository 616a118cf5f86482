// The page's parts, the cards, the cloth's looks, and the files they are written to.
#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "catalog/typed/colour_reading.hpp"
#include "cli/output/card.hpp"
#include "cli/output/layout.hpp"
#include "cli/output/page.hpp"
#include "cli/output/page_parts.hpp"
#include "cli/output/page_sections.hpp"
#include "cli/output/split_words.hpp"
#include "cli/output/svg.hpp"
#include "cli/output/yarn_in_cloth.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/odd_texts.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;
using asked::times;

TEST_CASE("a card for each skein says its length, mass and grist, and has a ladder behind it") {
    for (unsigned seed = 0; seed < 6; ++seed) {
        const auto q = asked::random_batch(seed, 1 + seed);
        const auto cards = card(q, "");
        CHECK(times(cards, "<article") == 2 * q.yarn.skeins.size());
        for (const auto& skein : q.yarn.skeins) {
            CHECK(holds(cards, q.units.yarn(skein.length)));
            CHECK(holds(cards, fmt::format("{:.1f} g", in_grams(skein.mass))));
        }
        CHECK_FALSE(holds(cards, "{{"));
    }
}

TEST_CASE("a card says the fibre, how to wash it, and nothing of what is not known") {
    struct Case {
        asked::Typed typed;
        const char *said, *care;
    };
    const Case cases[] = {
        {{}, "not given", "hot water and rubbing felt it"},
        {{"--fibre", "Corriedale"}, "Corriedale", "Felts easily: wash cool"},
        {{"--micron", "24-27"}, "own wool, 24-27 micron", "hot water and rubbing felt it"},
        {{"--fibre", "Merino 60%", "--fibre", "Corriedale 40%"},
         "Merino 60 %, Corriedale 40 %",
         "Felts easily: wash cool"},
        {{"--fibre", "flax"}, "lax", "it may shrink or run"},
    };
    for (const auto& c : cases) {
        auto typed = c.typed;
        typed.insert(typed.begin(), {"--skein", "171m/38.5g"});
        const auto text = card(asked::of_options(typed), "autumn");
        INFO(joined(typed, " "));
        CHECK(holds(text, c.said));
        CHECK(holds(text, c.care));
        CHECK(holds(text, "autumn"));
        CHECK_FALSE(holds(text, "per inch, laid"));  // no wraps were counted
    }
    CHECK(holds(card(asked::heron(), ""), "13 wpi, laid"));
}

TEST_CASE("what people wrote stands on a page as text, whatever it is") {
    std::mt19937 random{31};
    for (int i = 0; i < 6; ++i) {
        auto q = asked::of_heron();
        q.measured.batch.name = "<marquee>" + odd::anything(random, 5);
        q.yarn.skeins[0].name = "</style>" + odd::anything(random, 5);
        const auto ranked = rank(q);
        for (const auto& text : {page(q, ranked, {}), card(q, "<blink>then</blink>")}) {
            CHECK(odd::is_utf8(text));
            for (const char* markup : {"<marquee", "<blink", "<script", "\x1b"})
                CHECK_FALSE(holds(text, markup));
            CHECK(times(text, "</style>") == times(text, "<style>"));
        }
    }
}

TEST_CASE("the figures that a page leans on stand once each, those without a source last") {
    const auto& q = asked::heron();
    const auto ranked = rank(q);
    std::vector<const JudgedPlan*> plans;
    for (const auto& judged : ranked.best) plans.push_back(&judged);
    const auto all = leaned_on(q, plans);
    CHECK(all.size() > leaned_on(q, {}).size());
    bool sourced = true;
    for (std::size_t i = 0; i < all.size(); ++i) {
        CHECK_FALSE(all[i].mark.empty());
        CHECK((sourced || all[i].source.empty()));
        sourced = !all[i].source.empty();
        for (std::size_t j = 0; j < i; ++j) CHECK(all[i].what != all[j].what);
        if (all[i].mark == "read") CHECK_FALSE(all[i].source.empty());
    }
    for (const auto* judged : plans)
        for (const auto& piece : judged->plan.pieces)
            CHECK(std::any_of(all.begin(), all.end(), [&](const Leaned& one) {
                return one.what ==
                       (piece.knit ? piece.knit->fabric->name : piece.woven->weave->name);
            }));
}

TEST_CASE("a page shows forty answers and counts the others") {
    const auto& q = asked::heron();
    BulkAnswers bulk(q);
    std::vector<catalog::KeptSuggestion> all;
    for (int i = 0; i < 47; ++i)
        all.push_back(
            {{"idea", "lace shawl"}, {"needs", fmt::format("{:.0f}m", 20 * std::pow(1.12, i))}});
    all.push_back({{"idea", "lace shawl"}, {"needs", "20m"}, {"from", "<blink>me</blink>"}});
    bulk.take_all(all);
    const auto answers = ranked_answers(bulk);
    REQUIRE(answers.size() > 40);
    CHECK(answers.size() == bulk.ranked().size());
    std::size_t suggested = 0;
    for (const auto& one : answers) suggested += one.times;
    CHECK(suggested == 48);
    const auto section = answers_section(answers, {}, q);
    CHECK_FALSE(holds(section, "Could not be read"));
    NotAnswered unread{{{3, "<i>hat", "Mags", "more fields than the header names"}}, {}};
    for (int i = 4; i < 34; ++i) unread.cells.push_back(fmt::format("Row {}: needs: 'lots'", i));
    const auto with_unread = answers_section(answers, unread, q);  // twenty were named, and no Mags
    CHECK(times(with_unread, "<li>Row ") == 30);
    CHECK(holds(with_unread, "from Mags"));
    CHECK(holds(with_unread, "Could not be read: more fields than the header names"));
    CHECK_FALSE(holds(with_unread, "<i>hat"));
    CHECK(times(section, "Thank you for ") == std::min<std::size_t>(40, answers.size()));
    CHECK(holds(section, fmt::format("{}", answers.size() - 40)));
    CHECK_FALSE(holds(section, "<blink"));
    CHECK_FALSE(holds(answers_section({answers[0]}, {}, q), "more"));
}

TEST_CASE("talk has its thanks on a page, and only a question is said to be asked back") {
    const auto& q = asked::heron();
    BulkAnswers bulk(q);
    bulk.take_all({{{"idea", "thanks, lovely talk"}}});
    const auto thanked = answers_section(ranked_answers(bulk), {}, q);
    CHECK(holds(thanked, "Thank you for "));
    CHECK_FALSE(holds(thanked, "Asked back"));
    BulkAnswers unknown(q);
    unknown.take_all({{{"idea", "a draught excluder"}}});
    CHECK(
        holds(answers_section(ranked_answers(unknown), {}, q), "Asked back: There is no draught"));
}

TEST_CASE("a page's split tells every cut, one that cannot be says so") {
    const auto typed = asked::arguments("split", {"--sample", "knitted", "--main", "watch-cap"});
    auto q = ask(typed, asked::example("heron.toml"));
    const auto wanted = asked_of(typed, q);
    const auto split = allocation::split(q.yarn, wanted.request);
    const auto section = split_section(split, wanted, q);
    REQUIRE(split.found());
    for (const auto& cut : split.cuts)
        CHECK(holds(section, escaped(capital(cut_words(cut, wanted, q)))));
    CHECK(holds(section, proof(split.allocation)));
    CHECK_FALSE(holds(split_section({}, wanted, q), "<svg"));
}

TEST_CASE(
    "a yarn in cloth is nearly as thick as laid, combed it is no hairier and reads no worse") {
    for (unsigned seed = 0; seed < 12; ++seed) {
        const auto q = asked::random_batch(seed, 2);
        const auto look = fibres_of(q.yarn, 2);
        INFO(seed);
        CHECK(look.thickness > 0.75 * in_millimetres(q.yarn.laid_diameter));
        CHECK(look.thickness <= in_millimetres(q.yarn.laid_diameter));
        CHECK((look.halo >= 0 && look.halo <= 1));
        CHECK((look.blur >= 0 && look.blur <= 1));
        const auto combed = combed_alike(q);
        CHECK(combed.linear_density.mid.si() == near(q.yarn.linear_density.mid.si(), 1e-12));
        CHECK(fibres_of(combed, 2).halo <= look.halo);
        CHECK(fibres_of(combed, 2).blur <= look.blur);
    }
}

TEST_CASE("what is kept of a batch is on its page: swatches, the work begun, weighings") {
    const auto& q = asked::heron();
    CHECK(kept_section({}, q).empty());
    KeptWork work;
    work.swatches = {{catalog::SwatchText::Kind::knitted,
                      {{"stitches", "25/10.2cm"}, {"mass", "5.9g"}},
                      "2026-11-20",
                      true}};
    work.project = catalog::ProjectText{"triangle-shawl", "120cm", "", "2026-11-21"};
    work.weighings = {{"60", "", "133g", "2026-11-23"}, {"90", "", "<b>112g", ""}};
    work.weighings[1].ball = "112g";
    work.weighings[0].date = "<blink>";
    const auto section = kept_section(work, q);
    for (const char* said : {"25/10.2cm", "5.9g", "Begun: Triangle shawl", "2026-11-21", "row 60",
                             "133g", "After row 90 112.0 g", "&lt;blink&gt;"})
        CHECK(holds(section, said));
    work.project->template_name = "woven-scarf";
    work.weighings = {{"", "41cm", "60g", ""}};
    CHECK(holds(kept_section(work, q), "41cm woven"));
}

TEST_CASE("every caution stands once on a page, and the cards say only what they do not share") {
    for (unsigned seed = 0; seed < 4; ++seed) {
        const auto q = asked::random_batch(seed, 3);
        const auto ranked = rank(q);
        const auto best = best_few(ranked);
        const Minded minded(q, best);
        const auto text = page(q, ranked, {});
        for (const auto& said : minded.all())
            CHECK(times(text, "\">" + escaped(capital(said)) + "</li>") == 1);
        for (const auto& said : more_to_mind(q, all_made(ranked), minded)) {
            CHECK(times(text, "<li>" + escaped(capital(said)) + "</li>") == 1);
            CHECK(std::find(minded.all().begin(), minded.all().end(), said) == minded.all().end());
        }
        // A caution for each card is held by all of them or named on its own.
        for (std::size_t n = 1; n <= minded.all().size(); ++n)
            CHECK(times(text, fmt::format("href=\"#mind{}\"", n)) <= best.size());
    }
}

TEST_CASE("a page opens with a few cards and drawings, and folds everything that it makes") {
    const auto& q = asked::heron();
    const auto ranked = rank(q);
    const auto text = page(q, ranked, {});
    const auto fold = text.find("<details class=\"rest\"");
    REQUIRE(fold != std::string::npos);
    CHECK(times(text.substr(0, fold), "<article class=\"plan") == best_few(ranked).size());
    CHECK(times(text.substr(0, fold), "<li><a href=\"#best") == best_few(ranked).size());
    CHECK(holds(text, fmt::format("All {} that it makes", all_made(ranked).size())));
    const auto folded = text.substr(fold, text.find("</details>", fold) - fold);
    for (const auto& one : on_page(ranked))
        CHECK(holds(folded, escaped(one.judged->plan.article->title)));
    // Told how to print a sheet only where the command is known.
    CHECK_FALSE(holds(text, "to work by"));
    PageSections told;
    told.sheet = [](const std::string& article) { return "gristwright sheet " + article; };
    told.poster = "gristwright picture lineup heron.toml -o poster.svg";
    const auto with = page(q, ranked, told);
    CHECK(holds(with, "<code>gristwright sheet "));
    CHECK(holds(with, "on a sheet of A3: <code>gristwright picture lineup heron.toml"));
}

TEST_CASE("a page says which of several yarns it is about") {
    auto q = asked::of_heron();
    CHECK_FALSE(holds(page(q, rank(q), {}), "which yarn this is"));
    q.which_yarn = "of 3 yarns which yarn this is";
    CHECK(holds(page(q, rank(q), {}), "Of 3 yarns which yarn this is."));
}

TEST_CASE("a page shows the yarn's colours, and draws in the first") {
    auto q = asked::of_heron();
    const auto ranked = rank(q);
    CHECK_FALSE(holds(page(q, ranked, {}), ".piece:not(.other) { fill: #2f7377"));
    q.measured.colours = catalog::read_colours("teal,#8a8885", q.catalogue->spoken);
    const auto text = page(q, ranked, {});
    CHECK(holds(text, ".piece:not(.other) { fill: #2f7377"));
    CHECK(holds(text, "fill=\"#8a8885\""));
}
