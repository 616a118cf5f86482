#include "cli/ranking.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/project/role.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;

namespace {

using Part = std::vector<JudgedPlan>;

std::vector<const Part*> parts_of(const Ranked& r) {
    return {&r.best, &r.also, &r.samples, &r.short_of, &r.unfit};
}

// A verdict that needs no more of a plan than this.
JudgedPlan judged(double score, Reach reach, const Template& article) {
    JudgedPlan out;
    out.plan.article = std::make_shared<const Template>(article);
    out.plan.reach = reach;
    out.judgement.score = score;
    return out;
}

Template of(Craft craft) {
    Template out;
    out.craft = craft;
    return out;
}

}  // namespace

TEST_CASE("every template stands in one part, and only those of the craft asked for") {
    for (unsigned seed = 0; seed < 8; ++seed) {
        const auto q = asked::random_batch(seed, 1 + seed);
        for (const char* craft : {"", "knitted", "woven"}) {
            std::map<std::string, int> seen;
            const auto ranked = rank(q, craft);
            for (const auto* part : parts_of(ranked))
                for (const auto& j : *part) ++seen[j.plan.article->name];
            for (const auto& article : q.catalogue->templates) {
                INFO(article.name, " ", craft);
                const bool wanted = *craft == '\0' || words(article.craft) == craft;
                CHECK(seen[article.name] == (wanted ? 1 : 0));
            }
        }
    }
}

TEST_CASE("each part holds what belongs there, the best first") {
    for (unsigned seed = 0; seed < 12; ++seed) {
        const auto q = asked::random_batch(seed, 1 + seed % 5);
        const auto r = rank(q);
        for (const auto* part : {&r.samples, &r.unfit})
            CHECK(std::is_sorted(part->begin(), part->end(), [](const auto& a, const auto& b) {
                return a.judgement.score > b.judgement.score;
            }));
        CHECK(std::is_sorted(
            r.short_of.begin(), r.short_of.end(),
            [](const auto& a, const auto& b) { return a.plan.short_by < b.plan.short_by; }));
        CHECK(r.best.size() <= 6);
        std::map<std::string, int> kinds;
        for (std::size_t i = 0; i < r.best.size(); ++i)  // a second shawl, never a third
            CHECK(++kinds[r.best[i].plan.article->article] <= (i < 4 ? 2 : 1));
        for (const auto* part : {&r.best, &r.also, &r.short_of})
            for (const auto& j : *part) CHECK(j.judgement.score >= 60);
        for (const auto& j : r.samples) CHECK(j.plan.article->sample);
        for (const auto& j : r.short_of) CHECK(j.plan.short_by > Length{});
        for (const auto& j : r.unfit) CHECK(j.judgement.score < 60);
        for (const auto* part : {&r.best, &r.also, &r.samples})
            for (const auto& j : *part) CHECK(j.plan.certainty >= 0.9);
    }
}

// A lace half circle of 122 of 160 cm stood before a lace triangle of 152 of 170.
TEST_CASE("of two that serve alike the one nearer to its size is named first") {
    const auto named = [](JudgedPlan it, const char* name, double share, double score) {
        auto article = *it.plan.article;
        article.name = name;
        it.plan.size = article.ideal * share;
        it.plan.article = std::make_shared<const Template>(article);
        it.judgement.score = score;
        return it;
    };
    const auto any = rank(asked::heron()).best.front();
    for (const double share : {0.5, 0.8, 0.95}) {
        const auto whole = named(any, "whole", 1, 90), small = named(any, "a small one", share, 90);
        CHECK(sorted_out({small, whole}).best.front().plan.article->name == "whole");
        // What serves plainly better stays before it all the same.
        const auto better = named(small, "better", share, 98);
        CHECK(sorted_out({whole, better}).best.front().plan.article->name == "better");
    }
}

TEST_CASE("the order of the skeins and of the templates changes no rank") {
    const auto straight = asked::of_options({"--skein", "171m/38.5g", "--skein", "96m/21.6g"});
    auto turned = asked::of_options({"--skein", "96m/21.6g", "--skein", "171m/38.5g"});
    auto again = *turned.catalogue;
    auto backwards = again.templates.rows();
    std::reverse(backwards.begin(), backwards.end());
    again.templates = std::move(backwards);
    turned.catalogue = std::make_shared<const catalog::Catalogue>(std::move(again));
    const auto a = rank(straight), b = rank(turned);
    for (std::size_t p = 0; p < 5; ++p) {
        const auto &one = *parts_of(a)[p], &other = *parts_of(b)[p];
        REQUIRE(one.size() == other.size());
        for (std::size_t i = 0; i < one.size(); ++i)
            CHECK(one[i].plan.article->name == other[i].plan.article->name);
    }
}

TEST_CASE("more of the same yarn leaves nothing out that it reached for before") {
    const auto small = asked::of_options({"--skein", "200m/45g"});
    const auto large = asked::of_options({"--skein", "400m/90g"});
    std::map<std::string, bool> before;
    const auto little = rank(small), much = rank(large);
    for (const auto& j : little.short_of) before[j.plan.article->name] = true;
    for (const auto& j : much.short_of) {
        INFO(j.plan.article->name);
        CHECK(before.count(j.plan.article->name) == 1);
    }
}

TEST_CASE("more yarn of it makes more of it, and what falls short makes none") {
    const auto times = [](double need, double have, Reach reach) {
        Plan plan;
        plan.need = {metres(need), 0.05};
        plan.have = {metres(have), 0.02};
        plan.asked = 0.9;
        plan.reach = reach;
        return times_over(plan);
    };
    CHECK(times(100, 250, Reach::enough) == 2);
    CHECK(times(100, 205, Reach::enough) == 1);  // 200 would be too near
    CHECK(times(100, 105, Reach::enough_if_smaller) == 1);
    CHECK(times(100, 50, Reach::short_of) == 0);
}

TEST_CASE("of each craft the best that the metres reach for is compared") {
    const auto knitted = of(Craft::knitted), woven = of(Craft::woven);
    const Part plans{judged(90, Reach::short_of, knitted), judged(70, Reach::enough, knitted),
                     judged(80, Reach::enough_if_smaller, knitted),
                     judged(60, Reach::short_of, woven), judged(65, Reach::short_of, woven)};
    const auto pair = best_pair(plans);
    CHECK(pair.knitted->judgement.score == 80);
    CHECK(pair.woven->judgement.score == 65);
    CHECK_FALSE(best_pair({}).knitted);
    const Part only_woven{judged(60, Reach::enough, woven)};
    CHECK_FALSE(best_pair(only_woven).knitted);
    CHECK(best_pair(only_woven).woven->judgement.score == 60);
}

TEST_CASE("which craft serves better is said by points, by metres, or not at all") {
    struct Case {
        double knitted, woven;
        Reach knitted_reach, woven_reach;
        const char* said;
    };
    constexpr auto yes = Reach::enough, less = Reach::enough_if_smaller, no = Reach::short_of;
    const Case cases[] = {
        {90, 78, yes, yes, "The yarn serves the knitted one better, by 12 points."},
        {78, 90, yes, less, "The yarn serves the woven one better, by 12 points."},
        {90, 86, yes, yes, "The yarn serves both about alike: choose by hand and loom."},
        {90, 85, yes, yes, "The yarn serves the knitted one better, by 5 points."},
        {90, 20, no, less, "The yarn reaches only for the woven one."},
        {20, 90, less, no, "The yarn reaches only for the knitted one."},
        {90, 20, no, no, "The yarn reaches for neither."},
    };
    const auto knitted = of(Craft::knitted), woven = of(Craft::woven);
    for (const auto& c : cases)
        CHECK(pair_verdict(judged(c.knitted, c.knitted_reach, knitted),
                           judged(c.woven, c.woven_reach, woven)) == c.said);
}

TEST_CASE("articles that are made together fit into the batch together") {
    for (unsigned seed = 0; seed < 12; ++seed) {
        const auto q = asked::random_batch(seed, 6);
        const auto ranked = rank(q);
        const auto set = best_set_of(ranked);
        if (set.members.empty()) continue;
        CHECK(set.need <= q.yarn.length.mid);
        CHECK(set.certainty >= 0.5);
        for (const auto& member : set.members) CHECK_FALSE(member.article->sample);
    }
}

// What is left out before it is planned would not have served: no plan scores more than was hoped.
TEST_CASE("no plan of any article scores more than the best that it could") {
    const std::vector<std::vector<std::string>> yarns{
        {"--skein", "900m/100g", "--fibre", "Merino", "--ply", "2"},
        {"--skein", "300m/150g", "--wraps", "10wpi", "--fibre", "Shetland", "--prep", "carded"},
        {"--skein", "250m/100g", "--fibre", "cotton", "--ply", "3"},
        {"--skein", "90m/150g", "--fibre", "Corriedale", "--ply", "1"}};
    std::size_t looked = 0, near = 0;
    for (const auto& options : yarns) {
        const auto q = asked::of_options(options);
        for (const auto& whole : q.catalogue->templates)
            for (const auto role : {Role::whole, Role::weft}) {
                if (role == Role::weft && whole.craft != Craft::woven) continue;
                const auto article = in_role(whole, role);
                const double most = best_score(whole, role, q.yarn);
                const auto j =
                    judged_plan(article, q.yarn, q.catalogue->fabrics, q.measured.owned, q.request);
                CAPTURE(whole.name);
                CHECK(j.judgement.score <= most + 1e-9);
                ++looked, near += j.judgement.score > 0.9 * most;
            }
    }
    CHECK((looked > 400 && near > looked / 3));
}
