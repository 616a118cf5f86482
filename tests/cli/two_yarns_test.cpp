// Two yarns side by side, and one as it is and as it would be.
#include "cli/output/two_yarns.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "cli/output/page_sections.hpp"
#include "cli/output/svg.hpp"
#include "cli/would_be.hpp"
#include "engine/units/failure.hpp"
#include "tests/cli/asked.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

TEST_CASE("a batch as it would be keeps its fibre: other plies share the same singles") {
    const auto& q = asked::heron();  // of three plies
    for (const auto& [how, times] :
         {std::pair{"6-ply", 0.5}, {"2-ply", 1.5}, {"4-ply", 0.75}, {"double", 0.5}}) {
        const auto other = as_would_be(how, q);
        INFO(how);
        CHECK(in_metres(other.yarn.length.mid) == near(times * in_metres(q.yarn.length.mid), 1e-6));
        CHECK(in_grams(other.yarn.mass) == near(in_grams(q.yarn.mass), 1e-9));
        CHECK(in_tex(other.yarn.linear_density.mid) * times ==
              near(in_tex(q.yarn.linear_density.mid), 1e-3));
        CHECK(other.yarn.evidence.empty());
    }
    // Singles are longer by what plying takes up.
    CHECK(as_would_be("1-ply", q).yarn.length.mid > q.yarn.length.mid * 3);
    CHECK_THROWS_AS(as_would_be("felted", q), Refused);
    CHECK_THROWS_AS(as_would_be("2-ply", asked::of_options({"--skein", "100m/25g"})), Refused);
}

TEST_CASE("combed it reads more clearly and is as much yarn, carded it is loftier") {
    const auto& q = asked::heron();
    const auto combed = as_would_be("combed", q), carded = as_would_be("carded", q);
    const auto reads = [](const Question& of) {
        return of.yarn.trait(TraitName::definition).value;
    };
    CHECK(reads(combed) > reads(q));
    CHECK(reads(carded) < reads(q));
    CHECK(combed.yarn.length.mid == q.yarn.length.mid);
    CHECK(carded.yarn.packing.mid < combed.yarn.packing.mid);
}

TEST_CASE("each article stands once, the clearest first, and says what decides") {
    const auto& a = asked::heron();
    const auto b = as_would_be("combed", a);
    const auto all = in_both(a, b, "");
    REQUIRE(all.size() > 20);
    for (std::size_t i = 0; i + 1 < all.size(); ++i)
        CHECK(std::abs(all[i].ahead()) >= std::abs(all[i + 1].ahead()));
    for (const auto& both : all) {
        const auto said = deciding(both, a, b);
        INFO(both.a.plan.article->name, ": ", said);
        CHECK_FALSE(said.empty());
        CHECK((said == "alike") ==
              (std::abs(both.ahead()) <= 5 && both.a.plan.reach != Reach::short_of &&
               both.b.plan.reach != Reach::short_of));
        CHECK_FALSE((both.a.plan.reach == Reach::short_of && both.b.plan.reach == Reach::short_of));
    }
    for (const auto& both : in_both(a, b, "shawl")) CHECK(both.a.plan.article->article == "shawl");
}

TEST_CASE("the other way round says the same the other way round") {
    const auto& a = asked::heron();
    const auto b = as_would_be("double", a);
    const auto there = in_both(a, b, ""), back = in_both(b, a, "");
    REQUIRE(there.size() == back.size());
    for (const auto& both : there) {
        const auto same = std::find_if(back.begin(), back.end(), [&](const InBoth& other) {
            return other.a.plan.article->name == both.a.plan.article->name;
        });
        REQUIRE(same != back.end());
        CHECK(same->ahead() == near(-both.ahead(), 1e-9));
    }
}

TEST_CASE("both yarns are named, and what can hurt is said once") {
    const auto& a = asked::heron();
    const auto b = as_would_be("combed", a);
    const auto text = two_yarns_text(a, b, in_both(a, b, ""), 8);
    CHECK(holds(text, "A Heron: 535 m"));
    CHECK(holds(text, "B Heron, combed: 535 m"));
    CHECK(asked::times(text, "Care:") == 1);
    CHECK(holds(two_yarns_text(a, b, {}, 8), "Neither"));
}

TEST_CASE("on the page two yarns have their cloth, their figures and what each is better for") {
    const auto& a = asked::heron();
    const auto b = as_would_be("combed", a);
    const auto section = two_section(a, b);
    const auto all = in_both(a, b, "");
    const auto parts = parts_of(all);
    CHECK(holds(section, "Heron, combed"));
    CHECK(asked::times(section, "data:image/jpeg") == 2);
    CHECK(asked::times(section, "class=\"bar\"") == 2 * trait_count);
    for (std::size_t part = 0; part < 2; ++part) {
        CHECK(holds(section, parts[part].title));
        CHECK(holds(section, escaped(parts[part].articles.front()->a.plan.article->title)));
    }
    auto named = asked::of_heron();
    named.which_yarn = "the skeins are 3 yarns; this is about yarn 2";  // is no part of a figure
    CHECK_FALSE(holds(two_section(named, b), "yarn 2"));
    named.measured.batch.name = "<script>x</script>";
    CHECK_FALSE(holds(two_section(named, b), "<script>"));
}
