// A batch whose skeins are several yarns. Its lists below the answer, and makes --yarn all --json,
// spoke of the mean of all skeins, a yarn that nobody has.
#include "cli/yarns.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "cli/output/json.hpp"
#include "cli/output/yarn_foot.hpp"
#include "engine/units/failure.hpp"
#include "tests/cli/asked.hpp"
#include "tests/near.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::complaint;
using asked::holds;
using asked::run;

namespace {

const asked::Typed three{"--skein",  "210m/50g", "--skein", "120m/48g", "--skein",
                         "300m/52g", "--fibre",  "Romney",  "--ply",    "2"};

asked::Typed of_three(const asked::Typed& more) { return asked::and_more(three, more); }

Json json_of(const char* command, asked::Typed typed) {
    typed.push_back("--json");
    return Json::parse(run(command, typed).text);
}

// The tex of every yarn that the answer gives a profile of.
void each_profile(const Json& json, std::vector<double>& tex) {
    if (json.is_object() && json.contains("traits")) tex.push_back(json["tex"]["mid"]);
    if (json.is_structured())
        for (const auto& inner : json) each_profile(inner, tex);
}

Question whole(const asked::Typed& typed) {
    return ask(asked::arguments("yarn", typed), "", Skeins::all);
}

}  // namespace

TEST_CASE("each of several yarns is what the same skeins are when asked by their number") {
    const auto q = whole(three);
    const auto yarns = of_each_yarn(q);
    REQUIRE(yarns.size() == 3);
    std::size_t skeins = 0;
    Length length;
    for (std::size_t y = 0; y < yarns.size(); ++y) {
        const auto alone = asked::of_options(of_three({"--yarn", std::to_string(y + 1)}));
        CHECK(to_json(yarns[y]) == to_json(alone));
        CHECK(yarns[y].yarn.agreement.yarns.size() == 1);
        CHECK(&whole_batch(yarns[y]) != &yarns[y]);
        CHECK(whole_batch(yarns[y]).yarn.skeins.size() == 3);
        skeins += yarns[y].yarn.skeins.size();
        length += yarns[y].yarn.length.mid;
    }
    CHECK(skeins == 3);
    CHECK(length.si() == near(q.yarn.length.mid.si(), 1e-9));
}

TEST_CASE("no yarn is told of that is in no skein, whatever is asked of all") {
    for (const auto& [command, typed] :
         {std::pair{"yarn", three}, {"makes", of_three({"--yarn", "all", "--craft", "woven"})}}) {
        INFO(command);
        const auto json = json_of(command, typed);
        std::vector<double> tex;
        each_profile(json, tex);
        REQUIRE(tex.size() == 3);
        for (std::size_t y = 0; y < 3; ++y)
            CHECK(tex[y] == near(json["batch"]["skeins"][y]["tex"]["mid"].get<double>(), 1e-6));
        CHECK(json["batch"]["metres"]["mid"] == 630);
        CHECK_FALSE(json["batch"].contains("tex"));
    }
    auto typed = of_three({"--yarn", "all"});
    typed.insert(typed.begin(), "tube-cowl");
    const auto plans = json_of("plan", typed);
    REQUIRE(plans["yarns"].size() == 3);
    for (const auto& one : plans["yarns"]) CHECK(one["plan"]["template"] == "tube-cowl");
    CHECK(plans["yarns"][0]["plan"]["metres_needed"] != plans["yarns"][1]["plan"]["metres_needed"]);
}

TEST_CASE("what all of them say is said once, and each has its own") {
    const auto q = whole(three);
    std::vector<YarnFoot> feet;
    for (const auto& one : of_each_yarn(q)) feet.push_back(foot_of(one));
    const auto before = feet;
    const auto in_common = taken_in_common(q, feet);
    const auto has = [](const std::vector<std::string>& list, const std::string& text) {
        return std::find(list.begin(), list.end(), text) != list.end();
    };
    for (std::size_t y = 0; y < feet.size(); ++y)
        for (const auto& said : before[y].assumed)
            CHECK(has(in_common.assumed, said) != has(feet[y].assumed, said));
    for (const auto& said : in_common.assumed) CHECK_FALSE(holds(said, "wpi"));
    CHECK(holds(in_common.mind.front(), "3 yarns"));
    const auto text = run("yarn", three).text;
    for (const char* once : {"Mind:", "Assumed of each:", "scale read to"})
        CHECK(asked::times(text, once) == 1);
    for (const char* wraps : {"about 17 wpi", "about 20 wpi"}) CHECK(holds(text, wraps));
    CHECK(asked::times(run("makes", of_three({"--yarn", "all"})).text, "Care:") == 1);
}

TEST_CASE("what is of one yarn is not asked of all") {
    for (const char* command : {"compare", "answer", "spin-more", "sheet", "picture", "split"}) {
        asked::Typed typed{"--yarn", "all"};
        if (std::string(command) == "split") typed = {"--main", "wrist-cuffs", "--yarn", "all"};
        if (std::string(command) == "answer") typed = {"--idea", "hat", "--yarn", "all"};
        if (std::string(command) == "compare") typed.insert(typed.begin(), "scarf");
        if (std::string(command) == "spin-more") typed.insert(typed.begin(), "watch-cap");
        if (std::string(command) == "sheet") typed = {"watch-cap", "--yarn", "all", "-o", "s.html"};
        if (std::string(command) == "picture")
            typed = {"plan", "watch-cap", "--yarn", "all", "-o", "s.svg"};
        typed.insert(typed.end(), three.begin(), three.end());
        const auto said = complaint([&] { static_cast<void>(run(command, typed)); });
        INFO(command, ": ", said);
        CHECK(holds(said, "yarn 1 (skein 1, 238 tex), yarn 2 (skein 2, 400 tex), yarn 3"));
    }
}

TEST_CASE("a swatch is of one of several yarns, and tells nothing of the others") {
    const asked::Folder folder;
    const asked::Typed book{"--notebook", folder.file("book.sqlite")};
    const auto with_book = [&](asked::Typed typed) {
        typed.insert(typed.end(), book.begin(), book.end());
        return typed;
    };
    auto added = of_three({});
    added.insert(added.begin(), {"add", "odds"});
    static_cast<void>(run("batch", with_book(added)));
    const auto of_none = with_book({"odds", "--stitches", "20/10cm"});
    CHECK(holds(complaint([&] { static_cast<void>(run("swatch", of_none)); }), "say --from"));
    const auto kept = run("swatch", with_book({"odds", "--stitches", "20/10cm", "--from", "2"}));
    CHECK(holds(kept.text, "odds's skein 2 now knows"));
    const auto q = ask(asked::arguments("yarn", book), "odds", Skeins::all);
    const auto yarns = of_each_yarn(q);
    CHECK_FALSE(yarns[0].yarn.evidence.gauge);
    CHECK_FALSE(yarns[2].yarn.evidence.gauge);
    REQUIRE(yarns[1].yarn.evidence.gauge);
    CHECK(in_stitches_per_10cm(yarns[1].yarn.evidence.gauge->mid) == near(20, 0.02));
    // What it tells of the hands is how it compares with its own yarn, not with a mean.
    const auto seen = json_of("hands", book)["seen"];
    REQUIRE(seen.size() == 1);
    const auto against = seen[0]["gauge_against_table"]["mid"].get<double>();
    static_cast<void>(run("batch", with_book({"add", "alone", "--skein", "120m/48g", "--fibre",
                                              "Romney", "--ply", "2"})));
    static_cast<void>(run("swatch", with_book({"alone", "--stitches", "20/10cm"})));
    const auto both = json_of("hands", book)["seen"];
    REQUIRE(both.size() == 2);
    for (const auto& one : both)
        CHECK(one["gauge_against_table"]["mid"].get<double>() == near(against, 0.005));
}

TEST_CASE("another batch beside this one is one of its yarns, and which is said") {
    const asked::Folder folder;
    const asked::Typed book{"--notebook", folder.file("book.sqlite")};
    auto added = of_three(book);
    added.insert(added.begin(), {"add", "odds"});
    static_cast<void>(run("batch", added));
    for (const auto& [with, tex] : {std::pair{"odds", "173 tex"}, {"odds yarn 2", "400 tex"}}) {
        asked::Typed typed{"stranded-hat", asked::example("heron.toml"), "--with", with};
        typed.insert(typed.end(), book.begin(), book.end());
        const auto plan = run("plan", typed);
        INFO(plan.notes);
        CHECK(holds(plan.text, std::string(with) + " (" + tex + ")"));
        CHECK(holds(plan.notes, "the skeins are 3 yarns"));
    }
}
