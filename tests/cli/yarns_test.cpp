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

namespace {

const asked::Typed three{"--skein",  "210m/50g", "--skein", "120m/48g", "--skein",
                         "300m/52g", "--fibre",  "Romney",  "--ply",    "2"};

asked::Typed of_three(const asked::Typed& more) {
    auto out = three;
    out.insert(out.end(), more.begin(), more.end());
    return out;
}

Answer run(const char* command, const asked::Typed& typed) {
    const auto& c = command_named(command);
    return c.run(parse(c, typed));
}

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
