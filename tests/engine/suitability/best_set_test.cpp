#include "engine/suitability/best_set.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <set>
#include <string>

#include "engine/suitability/constants.hpp"
#include "tests/engine/invented.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using doctest::Approx;

namespace {

struct Field {
    std::vector<Template> articles;
    std::vector<Plan> plans;
    std::vector<Judged> judged;
};

// Plans of one batch of 500 m, stated outright: four kinds of article, needs that grow in every
// way, some short and some that serve poorly.
Field random_field(std::mt19937& random, std::size_t count) {
    std::uniform_real_distribution<double> unit(0, 1);
    Field out;
    out.articles.resize(count), out.plans.resize(count);
    for (std::size_t i = 0; i < count; ++i) {
        auto& article = out.articles[i];
        article.article = std::string(1, "abcd"[random() % 4]);
        article.smallest = centimetres(40), article.ideal = centimetres(100);
        auto& plan = out.plans[i];
        plan.article = invented::lent(article);
        plan.asked = 0.9;
        plan.have = {metres(500), 0.02};
        plan.size = centimetres(40 + std::floor(100 * unit(random)));
        plan.by_size = {5 * unit(random), 150 * unit(random), 200 * unit(random)};
        plan.need = {metres(plan.by_size.at(plan.size / article.ideal)), 0.05 + 0.1 * unit(random)};
        plan.reach = unit(random) < 0.15 ? Reach::short_of : Reach::enough;
        out.judged.push_back({&plan, 30 + 70 * unit(random)});
    }
    return out;
}

const Plan& plan_of(const Field& field, const Template& article) {
    return *std::find_if(field.plans.begin(), field.plans.end(),
                         [&](const Plan& p) { return p.article.get() == &article; });
}

// One article at one size.
struct Choice {
    const Judged* judged;
    double metres;
};

// Every plan worth having at five sizes from its smallest to its own, whole centimetres down.
std::vector<Choice> choices(const Field& field) {
    std::vector<Choice> out;
    for (const auto& j : field.judged) {
        if (j.plan->reach == Reach::short_of || j.score < 60) continue;
        const double low = in_centimetres(j.plan->article->smallest);
        const double high = in_centimetres(j.plan->size);
        for (const double part : {0.0, 0.25, 0.5, 0.75, 1.0}) {
            const double cm = std::floor(high - part * (high - low) + 1e-6);
            out.push_back({&j, j.plan->by_size.at(cm / 100)});
        }
    }
    return out;
}

struct Worth {
    double worth = 0;
    std::vector<Choice> members;

    void offer(const std::vector<Choice>& set) {
        std::set<std::string> kinds;
        double need = 0, error = 0, value = 0;
        for (const auto& c : set) {
            kinds.insert(c.judged->plan->article->article);
            need += c.metres;
            error += c.metres * c.judged->plan->need.spread;
            value += c.metres * c.judged->score / 100 - constants::article_price * 500;
        }
        const double margin = std::hypot(error / need, 0.02);
        if (kinds.size() < set.size() || value <= worth) return;
        if (normal_below(std::log(500 / need) / margin) < 0.9) return;
        *this = {value, set};
    }
};

// Every pair and every triple, without any cleverness.
Worth brute_force(const Field& field) {
    const auto all = choices(field);
    Worth best;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            best.offer({all[i], all[j]});
            for (std::size_t k = 0; k < j; ++k) best.offer({all[i], all[j], all[k]});
        }
    return best;
}

}  // namespace

TEST_CASE("the best set is worth exactly what trying every set finds") {
    std::mt19937 random{20261125};
    std::array<int, 4> of_size{};
    for (int i = 0; i < 60; ++i) {
        const auto field = random_field(random, 3 + random() % 6);
        const auto found = best_set(field.judged);
        const auto best = brute_force(field);
        INFO("field ", i);
        CHECK(found.worth == near(best.worth, 1e-9));
        CHECK(found.members.size() == best.members.size());
        ++of_size.at(found.members.size());
    }
    CHECK(of_size[0] > 0);  // the fields reach every answer there can be
    CHECK(of_size[1] == 0);
    CHECK(of_size[2] > 5);
    CHECK(of_size[3] > 5);
}

TEST_CASE("beside a set stands what the best article would be worth by itself") {
    std::mt19937 random{20261127};
    for (int i = 0; i < 40; ++i) {
        const auto field = random_field(random, 6);
        Worth alone;
        for (const auto& one : choices(field)) alone.offer({one});
        CHECK(best_set(field.judged).alone == near(alone.worth, 1e-9));
    }
}

TEST_CASE("a set holds what it says: kinds differ, sizes are useful, metres add up and reach") {
    std::mt19937 random{11};
    for (int i = 0; i < 60; ++i) {
        const auto field = random_field(random, 8);
        const auto found = best_set(field.judged);
        std::set<std::string> kinds;
        Length need;
        for (const auto& m : found.members) {
            kinds.insert(m.article->article);
            const auto& plan = plan_of(field, *m.article);
            need += m.need;
            CHECK(m.size >= m.article->smallest - millimetres(0.01));
            CHECK(m.size <= plan.size);
            CHECK(in_metres(m.need) == Approx(plan.by_size.at(m.size / m.article->ideal)));
            CHECK(plan.reach != Reach::short_of);
        }
        CHECK(kinds.size() == found.members.size());
        CHECK(in_metres(found.need) == Approx(in_metres(need)));
        if (!found.members.empty()) CHECK(found.certainty >= 0.9 - 1e-9);
        CHECK(std::is_sorted(found.members.begin(), found.members.end(),
                             [](const auto& a, const auto& b) { return a.need > b.need; }));
    }
}

TEST_CASE("the order in which plans are told changes nothing of the worth") {
    std::mt19937 random{5};
    for (int i = 0; i < 40; ++i) {
        auto field = random_field(random, 8);
        const double worth = best_set(field.judged).worth;
        std::shuffle(field.judged.begin(), field.judged.end(), random);
        CHECK(best_set(field.judged).worth == near(worth, 1e-9));
    }
}

TEST_CASE("no plans, one plan, or two of a kind make no set, three may be limited to two") {
    CHECK(best_set({}).members.empty());
    std::mt19937 random{2};
    auto field = random_field(random, 2);
    for (auto& p : field.plans) p.reach = Reach::enough;
    for (auto& j : field.judged) j.score = 90;
    for (auto& a : field.articles) a.article = "scarf";
    CHECK(best_set({field.judged[0]}).members.empty());
    CHECK(best_set(field.judged).members.empty());
    for (int i = 0; i < 20; ++i)
        CHECK(best_set(random_field(random, 8).judged, 2).members.size() <= 2);
}
