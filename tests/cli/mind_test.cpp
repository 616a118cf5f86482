// What can hurt somebody is said wherever work is chosen.
#include "cli/output/mind.hpp"

#include <doctest/doctest.h>

#include "cli/output/card.hpp"
#include "cli/output/layout.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright;
using namespace gristwright::cli;
using asked::holds;
using asked::times;
using asked::Typed;

namespace {

// As one line, so that it is found wherever it is broken.
std::string said_in_one_line(const std::string& command, const Typed& typed) {
    std::string line;
    for (const char c : asked::said(command, typed))
        if (c != '\n' && (c != ' ' || line.empty() || line.back() != ' '))
            line += c;
        else if (c == '\n' && !line.empty() && line.back() != ' ')
            line += ' ';
    return line;
}

}  // namespace

TEST_CASE("what can hurt is said in every answer, once") {
    const auto heron = asked::example("heron.toml");
    const char* neck = "round the neck: away from sleeping babies";
    const std::pair<const char*, Typed> commands[] = {{"makes", {heron}},
                                                      {"compare", {"scarf", heron}},
                                                      {"split", {heron, "--main", "garter-scarf"}},
                                                      {"spin-for", {"garter-scarf"}},
                                                      {"answer", {heron, "--idea", "scarf"}}};
    for (const auto& [command, typed] : commands) {
        const auto text = said_in_one_line(command, typed);
        INFO(command, ": ", text);
        CHECK(times(text, "Care: ") == 1);
        // Among what `makes` shows first there may be something worn round the neck, or not.
        CHECK(times(text, neck) <= 1);
        if (std::string_view(command) != "makes") CHECK(times(text, neck) == 1);
        CHECK(times(text, "felts: wash cool") == 1);
    }
    const auto plan = said_in_one_line("plan", {"garter-scarf", heron});
    CHECK(times(plan, "Anything worn round the neck") == 1);
    CHECK(holds(said_in_one_line("spin-for", {"garter-scarf"}), "fibre dust and raw fleece"));
    CHECK(holds(said_in_one_line("makes", {heron, "--craft", "woven"}), "a warp under tension"));
    CHECK(holds(card(asked::of_options({"--skein", "100m/50g", "--variegated"}), ""),
                "Dyes may run"));
    CHECK(holds(card(asked::heron(), ""), "A skein is a cord"));
}

TEST_CASE("who it is for brings its caution, in the answer and in the reply") {
    const auto heron = asked::example("heron.toml");
    for (const Typed& more :
         {Typed{"--idea", "hat for a baby"}, Typed{"--idea", "hat", "--who", "baby"}}) {
        Typed typed{heron};
        typed.insert(typed.end(), more.begin(), more.end());
        const auto text = said_in_one_line("answer", typed);
        INFO(text);
        CHECK(holds(text, "for a baby: no cords"));
        CHECK(holds(text, "For a baby: no cords"));  // the reply
        CHECK(holds(text, "children's nightwear"));
    }
    CHECK_FALSE(holds(said_in_one_line("answer", {heron, "--idea", "hat"}), "baby: no cords"));
}

TEST_CASE("what does not felt is not said to felt") {
    const Typed linen{"--skein", "300m/100g", "--fibre", "Flax"};
    auto typed = linen;
    typed.insert(typed.begin(), "woven-scarf");
    const auto plan = said_in_one_line("plan", typed);
    CHECK_FALSE(holds(plan, "felting cannot be undone"));
    CHECK(holds(plan, "shrink at the first wash"));
}

TEST_CASE("a reply keeps its length with the care behind it") {
    const auto one = [](const char* brief, bool harm) {
        return Caution{"", "", brief, harm, Mark::judgement, ""};
    };
    const std::vector<Caution> two{one("one thing", true), one("for the cloth", false),
                                   one("another", true), one("a third", true)};
    CHECK(with_care("Thank you.", two, 500) == "Thank you. One thing. Another.");
    CHECK(with_care("Thank you.", two, 22) == "Thank you. One thing.");
    CHECK(with_care("Thank you.", two, 12) == "Thank you.");
}
