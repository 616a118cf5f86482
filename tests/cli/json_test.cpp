#include "cli/output/json.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <cmath>
#include <functional>
#include <limits>
#include <nlohmann/json.hpp>
#include <random>

#include "cli/output/layout.hpp"
#include "cli/ranking.hpp"
#include "engine/suitability/reasons.hpp"
#include "engine/yarn/count.hpp"
#include "tests/cli/asked.hpp"
#include "tests/cli/odd_texts.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;

namespace {

// Every number in it, wherever it stands; fails for one that is not finite.
void each_number(const Json& json, const std::function<void(double)>& seen) {
    if (json.is_number()) return seen(json.get<double>());
    if (json.is_structured())
        for (const auto& inner : json) each_number(inner, seen);
}

Json read_back(const Json& json) { return Json::parse(dumped(json)); }

double mid(const Json& range) { return range.at("mid").get<double>(); }

void check_range(const Json& range) {
    CHECK(range.at("low").get<double>() <= mid(range));
    CHECK(range.at("high").get<double>() >= mid(range));
}

// The answer of a command as text and as JSON.
struct Both {
    std::string text;
    Json json;
};
Both answers(const char* command, asked::Typed typed) {
    const auto& c = command_named(command);
    Both out{c.run(parse(c, typed)).text, {}};
    typed.push_back("--json");
    out.json = Json::parse(c.run(parse(c, typed)).text);
    return out;
}

}  // namespace

TEST_CASE("a number keeps six figures, its sign and its order, and settles at once") {
    std::mt19937 random{13};
    std::uniform_real_distribution<double> exponent(-11, 15);
    double before = -1e30, before_written = -1e30;
    std::vector<double> values;
    for (int i = 0; i < 2000; ++i)
        values.push_back((i % 2 == 0 ? 1 : -1) * std::pow(10.0, exponent(random)));
    std::sort(values.begin(), values.end());
    for (const double value : values) {
        const double written = number(value).get<double>();
        CHECK(written == near(value, 5.01e-6));
        CHECK(number(written) == number(value));
        CHECK((before <= value && before_written <= written));
        before = value, before_written = written;
    }
}

TEST_CASE("what is no number is null, and what is nothing is nought") {
    for (const double none : {std::nan(""), std::numeric_limits<double>::infinity(),
                              -std::numeric_limits<double>::infinity()})
        CHECK(number(none).is_null());
    for (const double nought : {0.0, -0.0, 1e-13, -1e-300})
        CHECK(dumped(number(nought)) == "0.0\n");
    CHECK(number(123456.4) == 123456.0);
    CHECK(number(0.000123456749) == near(0.000123457, 1e-12));
}

TEST_CASE("texts from people are written, whatever bytes they are") {
    // Found a bug: a text that was nearly UTF-8 passed and stopped the program with "please
    // report".
    std::mt19937 random{14};
    for (int i = 0; i < 300; ++i) {
        const auto text = odd::anything(random, 6);
        CHECK(read_back(texts({text}))[0] == inert(text));
    }
}

TEST_CASE("a batch as JSON is read back equal, and its sums and ranges hold") {
    for (unsigned seed = 0; seed < 20; ++seed) {
        const auto q = asked::random_batch(seed, 1 + seed % 7);
        const auto json = read_back(to_json(q));
        CHECK(json == to_json(q));
        INFO(seed);
        double metres = 0, grams = 0;
        for (const auto& skein : json["skeins"]) {
            metres += skein["metres"].get<double>(), grams += skein["grams"].get<double>();
            check_range(skein["tex"]);
        }
        CHECK(mid(json["metres"]) == near(metres, 1e-5));
        CHECK(json["grams"].get<double>() == near(grams, 1e-5));
        CHECK(mid(json["tex"]) == near(1000 * grams / metres, 0.03));  // of the yarn, not its sum
        check_range(json["metres"]);
        check_range(json["tex"]);
        for (const auto& [name, trait] : json["traits"].items()) {
            INFO(name);
            CHECK((trait["value"] >= 0 && trait["value"] <= 1));
        }
        each_number(json, [](double value) { CHECK(std::isfinite(value)); });
    }
}

TEST_CASE("every count says the same grist") {
    const auto json = to_json(asked::heron());
    const double tex = mid(json["tex"]);
    for (const auto& system : count_systems()) {
        const auto back =
            linear_density_of(json["counts"][std::string(system.name)].get<double>(), system);
        INFO(system.name);
        CHECK(in_tex(back) == near(tex, 2e-5));
    }
}

TEST_CASE("a plan as JSON: pieces sum to the need, warp and weft to the piece, chances hold") {
    for (unsigned seed = 0; seed < 6; ++seed) {
        const auto q = asked::random_batch(seed, 3);
        for (const auto& article : q.catalogue->templates) {
            const auto judged = judged_plan(article, q);
            const auto json = read_back(to_json(judged, q.yarn));
            INFO(seed, " ", article.name);
            double own = 0, other = 0, grams = 0;
            for (const auto& piece : json["pieces"]) {
                const bool batch = piece["from_this_batch"];
                const double ours = piece["metres_of_batch"];
                CHECK((ours > 0) == batch);
                own += ours;
                other += mid(piece["metres"]) - ours;
                grams += batch ? piece["grams"].get<double>() : 0;
                check_range(piece["metres"]);
                if (piece.contains("warp_metres"))
                    CHECK(piece["warp_metres"].get<double>() + piece["weft_metres"].get<double>() ==
                          near(mid(piece["metres"]), 1e-5));
            }
            CHECK(mid(json["metres_needed"]) == near(own, 2e-5));
            CHECK(json["second_yarn_metres"].get<double>() ==
                  doctest::Approx(other).epsilon(1e-4).scale(10));
            CHECK(json["grams"].get<double>() == near(grams, 2e-5));
            check_range(json["metres_needed"]);
            CHECK((json["certainty"] >= 0 && json["certainty"] <= 1));
            CHECK((json["suitability"] >= 0 && json["suitability"] <= 100));
            CHECK((json["reach"] == "short") == (json["metres_short"] > 0));
            if (judged.plan.reach != Reach::short_of)
                CHECK(json["certainty"] >= json["certainty_asked"].get<double>() - 1e-6);
            each_number(json, [](double value) { CHECK(std::isfinite(value)); });
        }
    }
}

TEST_CASE("yarn: the JSON's numbers are those of the text") {
    const auto a = answers("yarn", {asked::example("heron.toml")});
    const auto& batch = a.json["batch"];
    CHECK(holds(a.text, fmt::format("{:.0f} m, {:.0f} g in {} skeins", mid(batch["metres"]),
                                    batch["grams"].get<double>(), batch["skeins"].size())));
    CHECK(
        holds(a.text, fmt::format("{:.2f} m/g", batch["counts"]["metres per gram"].get<double>())));
    for (const auto& skein : batch["skeins"])
        for (const auto& said : {fmt::format(" {:.1f} m ", skein["metres"].get<double>()),
                                 fmt::format(" {:.1f} g ", skein["grams"].get<double>()),
                                 fmt::format(" {:.0f} tex ", mid(skein["tex"]))})
            CHECK(holds(a.text, said));
    for (const auto& [name, trait] : batch["traits"].items()) {
        const auto said = [&](double off) {  // a value half way between two may fall to either
            return holds(a.text,
                         fmt::format("{:<14}{:.2f} ± ", name, trait["value"].get<double>() + off));
        };
        CHECK((said(-1e-6) || said(1e-6)));
    }
}

TEST_CASE("plan: the JSON's numbers are those of the text, for every template") {
    const auto heron = asked::example("heron.toml");
    for (const auto& name : asked::heron().catalogue->template_names()) {
        const auto a = answers("plan", {name, heron});
        const auto& plan = a.json["plan"];
        INFO(name);
        CHECK(holds(a.text, percent(plan["certainty"])));
        const auto& units = asked::heron().units;
        CHECK(holds(a.text, units.size(centimetres(plan["size_cm"]))));
        for (const auto& piece : plan["pieces"]) {
            const auto& counted = piece.contains("stitches") ? piece["stitches"] : piece["ends"];
            CHECK(holds(a.text, fmt::format("{} {}", counted.get<int>(),
                                            piece.contains("stitches") ? "stitches" : "ends")));
        }
    }
}

TEST_CASE("a set of articles together needs what its members need") {
    for (unsigned seed = 0; seed < 8; ++seed) {
        const auto q = asked::random_batch(seed, 5);
        const auto ranked = rank(q);
        const auto json = read_back(to_json(best_set_of(ranked)));
        double need = 0;
        for (const auto& member : json["members"]) need += member["metres_needed"].get<double>();
        if (!json["members"].empty())
            CHECK(json["metres_needed"].get<double>() == near(need, 1e-4));
    }
}

TEST_CASE("every answer says what it is and in which version") {
    const auto json = json_answer("makes");
    CHECK(dumped(json) == "{\n  \"gristwright\": 1,\n  \"command\": \"makes\"\n}\n");
}

TEST_CASE("a factor's reason and cost stand beside what it had and wanted") {
    const auto& q = asked::heron();
    for (const auto& article : q.catalogue->templates) {
        const auto json = to_json(judged_plan(article, q), q.yarn);
        for (const auto& factor : json["factors"]) {
            INFO(article.name, " ", factor["factor"].get<std::string>());
            CHECK(factor["weight"] > 0);
            CHECK((factor["desirability"] >= 0 && factor["desirability"] <= 1));
            CHECK(factor["cost"] >= 0);
            CHECK_FALSE(factor["reason"].get<std::string>().empty());
        }
    }
}
