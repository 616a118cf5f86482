// Answers in lines of any width, and the command that comes next.
#include "cli/output/terminal.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>

#include <algorithm>
#include <cstdlib>
#include <tuple>

#include "cli/output/layout.hpp"
#include "cli/output/next.hpp"
#include "cli/output/table.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright::cli;
using asked::holds;
using asked::said;
using asked::Typed;

namespace {

// COLUMNS for the time of a test.
class Columns {
  public:
    explicit Columns(const char* said) { ::setenv("COLUMNS", said, 1); }
    ~Columns() { ::unsetenv("COLUMNS"); }
    Columns(const Columns&) = delete;
    Columns& operator=(const Columns&) = delete;
};

}  // namespace

TEST_CASE("a terminal is as wide as it says, text no wider than can be read") {
    CHECK(table_width() == 79);
    const std::tuple<const char*, std::size_t, std::size_t> widths[] = {
        {"60", 59, 59}, {"100", 99, 99},  {"200", 199, 99}, {"3", 39, 39},
        {"0", 79, 79},  {"wide", 79, 79}, {"-5", 79, 79},   {"99999999", 79, 79}};
    for (const auto& [columns, table, text] : widths) {
        const Columns set(columns);
        INFO(columns);
        CHECK(table_width() == table);
        CHECK(text_width() == text);
    }
}

TEST_CASE("to a page, which says it has a thousand columns, no line of running text is broken") {
    const auto of_80 = said("plan", {"triangle-shawl", asked::example("heron.toml")});
    const Columns set("1000");
    const auto whole = said("plan", {"triangle-shawl", asked::example("heron.toml")});
    const auto one_line = [](std::string text) {
        text.erase(std::unique(text.begin(), text.end(),
                               [](char a, char b) { return a == ' ' && b == ' '; }),
                   text.end());
        return text;
    };
    CHECK(asked::lines(whole).size() < asked::lines(of_80).size());
    for (const auto& line : asked::lines(whole))
        if (line.find(". ") == 3) CHECK(line.back() == '.');  // a step ends in its own line
    auto joined_80 = of_80, joined_whole = whole;
    std::replace(joined_80.begin(), joined_80.end(), '\n', ' ');
    std::replace(joined_whole.begin(), joined_whole.end(), '\n', ' ');
    CHECK(one_line(joined_80) == one_line(joined_whole));
}

TEST_CASE("makes and answer fit the terminal, and a wide one gets title, range and name") {
    const auto heron = asked::example("heron.toml");
    const std::pair<std::string, Typed> commands[] = {
        {"makes", {heron}},
        {"answer", {heron, asked::example("suggestions.csv")}},
        {"compare", {"scarf", heron}},
        {"split", {heron, "--main", "garter-scarf"}}};
    for (const char* columns : {"64", "80", "100", "140"}) {
        const Columns set(columns);
        for (const auto& [command, typed] : commands)
            for (const auto& line : asked::lines(said(command, typed))) {
                INFO(columns, ": ", line);
                const bool copied = line.rfind("Next: ", 0) == 0;
                CHECK((characters(line) <= table_width() || copied));
            }
    }
    const Columns set("140");
    const auto wide = said("makes", {heron});
    CHECK(holds(wide, "its name for plan"));
    CHECK(holds(wide, "Garter triangle"));
    CHECK(holds(wide, "garter-triangle-shawl"));
    CHECK(holds(wide, " to "));
}

TEST_CASE("an article takes one line, and its name is there to be typed") {
    const auto text = said("makes", {asked::example("heron.toml")});
    const auto lines = asked::lines(text);
    for (const char* name : {"garter-triangle-shawl", "fingerless-mitts", "gloves"}) {
        const auto holding = std::count_if(lines.begin(), lines.end(), [&](const auto& line) {
            return holds(line, name) && line.rfind("Next", 0) != 0;
        });
        INFO(name);
        CHECK(holding == 1);
    }
    CHECK(lines.size() < 70);
    CHECK(holds(said("makes", {asked::example("heron.toml"), "--long"}), "for: "));
}

TEST_CASE("columns go by what they say must go first, and what stays is all there") {
    Table table({{"a"}, {"b", true, 2}, {"c", false, 1}});
    table.add({{"one"}, {"22"}, {"three"}});
    table.add({{"x"}, {"4444"}, {"y"}});
    CHECK(table.fits(16));
    CHECK_FALSE(table.fits(15));
    CHECK(table.lines(16).rows == std::vector<std::string>{"one    22  three\n", "x    4444  y\n"});
    CHECK(table.lines(15).rows == std::vector<std::string>{"one  three\n", "x    y\n"});
    CHECK(table.lines(4).rows == std::vector<std::string>{"one\n", "x\n"});
    CHECK(table.lines(1).head == "a\n");
}

TEST_CASE("the last line can be copied: it runs, and gives the batch as it was given") {
    const Typed typed{"--skein", "300m/100g",        "--fibre",     "Merino 70%",
                      "--fibre", "Silk, Bombyx 30%", "--certainty", "95"};
    const auto next = next_line({"plan", "leg-warmers"}, "", asked::arguments("makes", typed));
    CHECK(next ==
          "Next: gristwright plan leg-warmers --skein 300m/100g --fibre 'Merino 70%' --fibre "
          "'Silk, Bombyx 30%' --certainty 95\n");
    Typed long_one;
    for (int i = 0; i < 20; ++i) long_one.insert(long_one.end(), {"--skein", "300m/100g"});
    CHECK(next_line({"makes"}, "", asked::arguments("yarn", long_one)) ==
          "Next: gristwright makes (and the batch as you gave it)\n");
    const auto short_one = next_line({"plan", "gloves"}, "my batch.toml",
                                     asked::arguments("makes", {"--certainty", "95"}));
    CHECK(short_one == "Next: gristwright plan gloves 'my batch.toml' --certainty 95\n");
    CHECK(shell_word("it's") == "'it'\\''s'");
    CHECK(shell_word("") == "''");
    CHECK(shell_word("171m/38.5g") == "171m/38.5g");
    const auto made = said("makes", {asked::example("heron.toml")});
    CHECK(holds(asked::lines(made).back(), "Next: "));
}
