#include "cli/output/working.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>

#include "cli/output/layout.hpp"
#include "engine/cloth/knitting_constants.hpp"
#include "engine/cloth/weaving_constants.hpp"
#include "engine/evidence/constants.hpp"
#include "engine/project/constants.hpp"
#include "engine/suitability/constants.hpp"
#include "engine/yarn/constants.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

// As it was before it was broken into lines.
std::string in_one_line(const std::string& text) {
    return wrapped(joined(asked::lines(text), " "), 0);
}

std::string flat_text(const std::string& text) {
    auto out = in_one_line(text);
    std::replace(out.begin(), out.end(), '\n', ' ');
    return out;
}

void check_lines(const std::string& text) {
    for (const auto& line : asked::lines(text)) {
        INFO(line);
        const bool copied = line.rfind("Next: ", 0) == 0;  // never broken
        CHECK((characters(line) <= text_width() || copied));
        CHECK_FALSE(holds(line, "nan"));
        CHECK_FALSE(holds(line, " inf"));
        CHECK_FALSE(holds(line, "-0 "));
    }
}

}  // namespace

TEST_CASE("the working of every plan fits the page and has no number that is none") {
    for (const unsigned seed : {0U, 1U, 2U, 4U, 7U}) {
        const auto q = asked::random_batch(seed, 1 + seed % 3);
        check_lines(yarn_working(q));
        for (const auto& article : q.catalogue->templates) {
            INFO(article.name);
            check_lines(plan_working(judged_plan(article, q), q));
        }
    }
}

TEST_CASE("the grist is worked out in numbers that divide to what is said") {
    for (unsigned seed = 0; seed < 10; ++seed) {
        const auto q = asked::random_batch(seed, 3);
        const auto text = flat_text(yarn_working(q));
        CHECK(holds(text, fmt::format("grist = mass / length = {:.1f} g / {:.1f} m = {:.1f} tex",
                                      in_grams(q.yarn.mass), in_metres(q.yarn.length.mid),
                                      in_tex(q.yarn.linear_density.mid))));
    }
}

TEST_CASE("every figure stands with its mark, one that is read has its source") {
    const auto text = flat_text(yarn_working(asked::heron()));
    for (const auto& c : {constants::relaxation_half_width, constants::humidity_half_width,
                          constants::mass_per_humidity, constants::carded_packing}) {
        INFO(c.name);
        CHECK(holds(text, fmt::format("{} = {:g}", c.name, c.value)));
        CHECK(holds(text, "[" + std::string(words(c.mark))));
        CHECK(holds(text, std::string(c.source)));
    }
}

TEST_CASE("what was not measured is not worked with") {
    const auto bare = asked::of_options({"--skein", "171m/38.5g"});
    const auto text = flat_text(yarn_working(bare));
    CHECK_FALSE(holds(text, "packing = tex"));
    CHECK_FALSE(holds(text, "skeins: statistic"));
    CHECK(holds(text, std::string(constants::wraps_per_root_grist.name)));
    CHECK(holds(flat_text(yarn_working(asked::heron())), "packing = tex"));
    CHECK(holds(flat_text(yarn_working(asked::heron())), "skeins: statistic"));
}

TEST_CASE("a plan is worked out fabric by fabric, piece by piece, wish by wish") {
    const auto& q = asked::heron();
    for (const auto& article : q.catalogue->templates) {
        const auto judged = judged_plan(article, q);
        const auto text = flat_text(plan_working(judged, q));
        INFO(article.name);
        for (const auto& piece : judged.plan.pieces) {
            CHECK(holds(text,
                        fmt::format("{}: {} of {:.0f} cm2", piece.piece->name,
                                    words(piece.outline.shape), area(piece.outline).si() * 1e4)));
            CHECK(holds(text, piece.knit ? "tightness" : "greatest sett"));
        }
        for (std::size_t f = 0; f < factor_count; ++f)
            if (judged.judgement.factors[f].weight > 0)
                CHECK(holds(text, fmt::format("{} had", words(static_cast<FactorName>(f)))));
        CHECK(holds(text, "chance = P(needed <= to hand)"));
        CHECK(holds(text, percent(judged.plan.certainty)));
    }
}

TEST_CASE("a working ends by saying what it leaves out, and that is left out") {
    const auto& q = asked::heron();
    const auto* cap = q.catalogue->template_named("watch-cap");
    REQUIRE(cap);
    const auto left_out = flat_text(not_shown());
    for (const auto& text :
         {flat_text(yarn_working(q)), flat_text(plan_working(judged_plan(*cap, q), q))}) {
        INFO(text);
        CHECK(text.find(left_out) + left_out.size() == text.size());
        for (const auto& hidden : {constants::finest_wool, constants::purpose_constants[0].freedom,
                                   constants::washed_hair[0].width, constants::cover_weight,
                                   constants::rest_differs, constants::serves_from})
            CHECK_FALSE(holds(text, std::string(hidden.name) + " ="));
    }
}
