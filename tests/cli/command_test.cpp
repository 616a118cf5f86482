#include "cli/command.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "cli/topics.hpp"
#include "tests/cli/asked.hpp"

using namespace gristwright::cli;
using asked::arguments;
using asked::complaint;
using asked::holds;
using asked::Typed;

namespace {

// Every way to slip once in a word: a letter lost, doubled, exchanged with its neighbour, mistyped.
std::vector<std::string> slips(const std::string& word) {
    std::vector<std::string> out;
    for (std::size_t i = 0; i < word.size(); ++i) {
        out.push_back(word.substr(0, i) + word.substr(i + 1));
        out.push_back(word.substr(0, i + 1) + word.substr(i));
        out.push_back(word.substr(0, i) + "q" + word.substr(i + 1));
        if (i + 1 == word.size()) continue;
        out.push_back(word);
        std::swap(out.back()[i], out.back()[i + 1]);
    }
    return out;
}

// One letter more, another letter, or two neighbours exchanged make the one word of the other.
bool one_slip_apart(const std::string& a, const std::string& b) {
    if (a.size() > b.size()) return one_slip_apart(b, a);
    std::size_t same = 0, tail = 0;
    while (same < a.size() && a[same] == b[same]) ++same;
    while (tail < a.size() - same && a[a.size() - 1 - tail] == b[b.size() - 1 - tail]) ++tail;
    const auto left = a.size() - same - tail, right = b.size() - same - tail;
    const bool exchanged =
        left == 2 && right == 2 && a[same] == b[same + 1] && a[same + 1] == b[same];
    return (left <= 1 && right <= 1) || exchanged;
}

std::string suggested(const std::string& said) {
    constexpr std::string_view before = "did you mean '";
    const auto at = said.find(before);
    if (at == std::string::npos) return "";
    const auto begin = at + before.size();
    return said.substr(begin, said.find('\'', begin) - begin);
}

// The word meant is suggested, or one that is just as near.
void check_suggestion(const std::string& said, const std::string& typed, const std::string& meant) {
    INFO(typed, " for ", meant, ": ", said);
    const auto word = suggested(said);
    CHECK((word == meant || one_slip_apart(typed, word)));
}

std::string misuse(const std::string& command, const Typed& typed) {
    try {
        arguments(command, typed);
    } catch (const Misused& error) {
        return error.what();
    }
    return "nothing was wrong";
}

}  // namespace

TEST_CASE("one slip in a command's name, and the name is suggested") {
    const auto names = command_names();
    for (const auto& meant : names)
        for (const auto& typed : slips(meant)) {
            if (typed == meant || std::count(names.begin(), names.end(), typed) > 0) continue;
            check_suggestion(complaint([&] { command_named(typed); }), typed, meant);
        }
}

TEST_CASE("one slip in an option of any command, and the option is suggested") {
    for (const auto& command : commands())
        for (const auto& option : command.options) {
            const auto meant = "--" + std::string(option.name);
            for (const auto& typed : slips(meant)) {
                if (typed.size() < 4 || typed.substr(0, 2) != "--") continue;
                const auto said = misuse(std::string(command.name), {typed});
                if (!holds(said, "has no option")) continue;  // another of its options
                check_suggestion(said, typed, meant);
            }
        }
}

TEST_CASE("one slip in a word that an option knows, and the word is suggested") {
    for (const auto& command : commands())
        for (const auto& option : command.options)
            for (const auto& meant : apart(option.words))
                for (const auto& typed : slips(meant)) {
                    if (typed == meant || typed.size() < 3) continue;
                    const auto said = complaint([&] {
                        Typed all(command.least_words, "x");
                        all.push_back("--" + std::string(option.name) + "=" + typed);
                        parse(command, all);
                    });
                    CHECK(holds(said, "--" + std::string(option.name) + " is "));
                    check_suggestion(said, typed, meant);
                }
}

TEST_CASE("a value comes through as it was typed, after a space and after an equals sign") {
    // Found a bug: the parser below took '[a,b]' for a list and kept b, '{}' for nothing, and what
    // begins with a minus for an option.
    for (const char* value :
         {"Heron", "a b", "[a,b]", "[]", "{}", "",    "-5m", "-",    "a=b",   "=",    "'q'",
          "\"",    "%%",  "#1",    "[",  "x]", "\\n", "羊",  "true", "1,2;3", "@file"}) {
        const auto text = std::string(value);
        INFO(text);
        for (const auto& typed : {Typed{"--name", text}, Typed{"--name=" + text}})
            CHECK(arguments("yarn", typed).all("name") == Typed{text});
    }
    for (const char* word : {"[a,b]", "{}", "-5m", "a=b", "-", "", "[]"})
        CHECK(arguments("yarn", {word}).words == Typed{word});
    CHECK(arguments("yarn", {"--", "--counts"}).words == Typed{"--counts"});
}

TEST_CASE("what was given again is kept in its order, and refused where it holds once") {
    const auto typed =
        arguments("makes", {"--skein", "1m/1g", "--name=B", "--skein=2m/2g", "heron.toml"});
    CHECK(typed.all("skein") == Typed{"1m/1g", "2m/2g"});
    CHECK(typed.text("name") == "B");
    CHECK(typed.words == Typed{"heron.toml"});
    CHECK(typed.text("fibre", "none") == "none");
    CHECK_FALSE(typed.has("json"));
    CHECK(arguments("makes", {"--json"}).has("json"));
    // The last one counted, without a word of the others.
    CHECK_THROWS_WITH_AS(arguments("makes", {"--name=A", "--name", "B"}),
                         doctest::Contains("--name is given 2 times"), Misused);
}

TEST_CASE("what is wrong with the use says what, and what would be right") {
    struct Case {
        const char* command;
        Typed typed;
        const char *wrong, *right;
    };
    const Case cases[] = {
        {"yarn", {"--skein"}, "--skein needs a value", ""},
        {"yarn", {"--counts", "--skein"}, "--skein needs a value", ""},
        {"yarn", {"--json=yes"}, "--json takes no value", ""},
        {"yarn", {"a", "b"}, "takes [BATCH.toml | SKEINS.csv]", "gristwright yarn --help"},
        {"plan", {}, "plan takes TEMPLATE", "gristwright plan --help"},
        {"yarn", {"--wrap", "16wpi"}, "yarn has no option '--wrap'", "did you mean '--wraps'?"},
        {"yarn", {"-n", "A"}, "yarn has no option '-n'", ""},
        {"yarn", {"-o", "file"}, "yarn has no option '-o'", ""},
        {"undo", {"all"}, "undo takes no words", "gristwright undo --help"},
        {"batch", {}, "batch takes", "gristwright batch --help"},
        {"split", {"--Sample", "knitted"}, "no option '--Sample'", "did you mean '--sample'?"},
    };
    for (const auto& c : cases) {
        const auto said = misuse(c.command, c.typed);
        INFO(said);
        CHECK(holds(said, c.command));
        CHECK(holds(said, c.wrong));
        CHECK(holds(said, c.right));
    }
}

TEST_CASE("words come apart at their stroke and go together again") {
    const std::pair<const char*, Typed> cases[] = {
        {"", {}}, {"a", {"a"}}, {"a|b", {"a", "b"}}, {"a||b", {"a", "", "b"}}, {"|a", {"", "a"}}};
    for (const auto& [text, parts] : cases) CHECK(apart(text) == parts);
    CHECK(apart("x\ny\n", '\n') == Typed{"x", "y"});
}

TEST_CASE(
    "every record is fit to be shown: names once, helps without an end, words within bounds") {
    std::set<std::string_view> names;
    for (const auto& command : commands()) {
        INFO(command.name);
        CHECK(names.insert(command.name).second);
        CHECK(command.summary.back() == '.');
        CHECK(command.least_words <= command.most_words);
        CHECK((command.most_words == 0) == command.words.empty());
        std::set<std::string_view> options;
        for (const auto& option : command.options) {
            INFO(option.name);
            CHECK(options.insert(option.name).second);
            CHECK(option.name != "help");
            CHECK_FALSE(option.help.empty());
            CHECK(option.help.back() != '.');
            CHECK((option.words.empty() || !option.value.empty()));
        }
    }
}

TEST_CASE("the help of a command names every option once, in lines that fit") {
    for (const auto& command : commands()) {
        const auto text = help(command);
        for (const auto& line : asked::lines(text)) CHECK(line.size() <= 79);
        for (const auto& option : command.options) {
            const auto head = "\n  --" + std::string(option.name);
            const auto at = text.find(head + (option.value.empty() ? "" : " "));
            INFO(command.name, head);
            REQUIRE(at != std::string::npos);
        }
    }
}

TEST_CASE("a topic has a title that says what it is about") {
    for (const auto& topic : topics()) {
        INFO(topic.name);
        const auto title = topic.text.substr(0, topic.text.find('\n'));
        CHECK(title.substr(title.find(": ") + 2) == about(topic));
        CHECK_FALSE(about(topic).empty());
        CHECK(topic.text.back() == '\n');
    }
}
